package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
import brightseam.people.PersonCommand.UnlockPin;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.stereotype.Component;

/**
 * Opens the badge named by {@code brightseam.unlock-badge} at the start: the way back in when wrong PINs closed the
 * only administrator's badge. Whoever can restart the server owns the machine anyway.
 */
@Component
class UnlockAtStart implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(UnlockAtStart.class);

    private final People people;
    private final ShopClock clock;
    private final String badge;

    UnlockAtStart(People people, ShopClock clock, @Value("${brightseam.unlock-badge:}") String badge) {
        this.people = people;
        this.clock = clock;
        this.badge = badge;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (!badge.isBlank()) {
            Origin origin = new Origin(clock.now(), Origin.SHOP, "server", clock.isDemo());
            LOG.warn("unlock {}: {}", badge, people.run(new UnlockPin(origin, new BadgeId(badge))));
        }
    }
}
