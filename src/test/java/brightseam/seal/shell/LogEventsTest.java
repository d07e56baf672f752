package brightseam.seal.shell;

import static brightseam.kernel.Samples.ORIGIN;

import brightseam.ledger.shell.ApprovedEvents;
import brightseam.seal.LogEvent;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LogEventsTest {

    @Test
    void written_forms_stay_readable() {
        Instant made = Instant.parse("2031-01-01T00:00:00Z");
        ApprovedEvents.check("log-events.txt", LogStreams.TYPES, LogStreams.KIND.codec(), List.of(
                new LogEvent.KeyRotated("example.invalid/log+0a0b0c0d+AQ==", made, "example.invalid/log+01020304+AQ==",
                        made.plusSeconds(60), false, "every year", ORIGIN),
                new LogEvent.LossNoted(1_042, 1_000, Optional.of("note\n"), "A. Person", "disk died", ORIGIN),
                new LogEvent.LossNoted(1_042, 1_000, Optional.empty(), "A. Person", "disk died", ORIGIN)));
    }
}
