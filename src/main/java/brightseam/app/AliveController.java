package brightseam.app;

import brightseam.kernel.shell.ShopClock;
import java.util.UUID;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/**
 * Answers the heartbeat of every page: that the server is there, whether it is still the same one, and where the
 * shop's elapsed time line stands. Tells nothing else, so it asks nobody to sign in.
 */
@RestController
class AliveController {

    private final String boot = UUID.randomUUID().toString();
    private final ObjectProvider<ShopClock> clock;

    AliveController(ObjectProvider<ShopClock> clock) {
        this.clock = clock;
    }

    /** 204 with {@code Shop-Boot}, new at each start, and {@code Shop-Elapsed-Millis}; never to be stored. */
    @GetMapping("/alive")
    ResponseEntity<Void> alive() {
        ResponseEntity.HeadersBuilder<?> answer = ResponseEntity.noContent()
                .cacheControl(CacheControl.noStore()).header("Shop-Boot", boot);
        clock.ifAvailable(now -> answer.header("Shop-Elapsed-Millis", String.valueOf(now.now().elapsedMillis())));
        return answer.build();
    }
}
