package brightseam.kernel;

import java.time.Instant;

/** Origins for tests. */
public final class Samples {

    /** Eight in the morning of an invented day, on the tablet by the bagging bench. */
    public static final Origin ORIGIN = origin(0);

    private Samples() {}

    /** The same, {@code seconds} later. */
    public static Origin origin(long seconds) {
        Moment at = new Moment(Instant.parse("2031-03-04T08:00:00Z").plusSeconds(seconds), 1_000L * seconds);
        return new Origin(at, new BadgeId("P-0007"), "bagging-1", true);
    }
}
