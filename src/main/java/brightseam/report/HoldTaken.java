package brightseam.report;

import brightseam.kernel.Moment;
import brightseam.procedure.Hold;
import java.time.Duration;
import java.util.Optional;

/**
 * A timed hold as it was kept.
 *
 * @param limits what it had to last
 * @param begunAt when it began
 * @param begunBy who began it
 * @param endedAt when it ended; empty while it runs, and where a return cut it short
 * @param endedBy who ended it
 */
public record HoldTaken(Hold limits, Moment begunAt, Who begunBy, Optional<Moment> endedAt, Optional<Who> endedBy) {

    /** How a hold stands to its limits. */
    public enum Verdict {
        /** It was not ended. */
        NOT_ENDED,
        /** Between minimum and maximum. */
        WITHIN,
        /** Shorter than its minimum. */
        SHORT,
        /** Longer than its maximum. */
        OVER
    }

    /** How long it lasted on the shop's elapsed time line, where it ended. */
    public Optional<Duration> lasted() {
        return endedAt.map(end -> end.since(begunAt));
    }

    /** How it stands to its limits. */
    public Verdict verdict() {
        return lasted().map(this::verdict).orElse(Verdict.NOT_ENDED);
    }

    private Verdict verdict(Duration lasted) {
        if (lasted.compareTo(limits.minimum()) < 0) {
            return Verdict.SHORT;
        }
        return limits.maximum().filter(longest -> lasted.compareTo(longest) > 0).isPresent()
                ? Verdict.OVER : Verdict.WITHIN;
    }
}
