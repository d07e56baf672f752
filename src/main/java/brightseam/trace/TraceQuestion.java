package brightseam.trace;

import java.time.Instant;
import java.util.Optional;

/**
 * Asks what a thing touched. At least one of label and lot is given.
 *
 * @param kind what sort of thing
 * @param label its label; empty to ask for every label that {@code lot} has been under
 * @param lot its lot, or the name of a bath's fill; empty to ask for every lot under {@code label}
 * @param from contact that ended before this wall time is left out
 * @param until contact that began after this wall time is left out
 */
public record TraceQuestion(ThingKind kind, Optional<String> label, Optional<String> lot, Optional<Instant> from,
        Optional<Instant> until) {

    /** Refuses a question that names neither label nor lot, and a time that ends before it begins. */
    public TraceQuestion {
        if (label.isEmpty() && lot.isEmpty()) {
            throw new IllegalArgumentException("give a label or a lot");
        }
        if (from.isPresent() && until.isPresent() && until.get().isBefore(from.get())) {
            throw new IllegalArgumentException("the time ends before it begins");
        }
    }

    /** Asks for everything that {@code thing} touched at any time. */
    public static TraceQuestion of(Thing thing) {
        return new TraceQuestion(thing.kind(), Optional.of(thing.label()),
                thing.kind().hasLots() ? Optional.of(thing.lot()) : Optional.empty(), Optional.empty(),
                Optional.empty());
    }
}
