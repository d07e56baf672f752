package brightseam.ui.bench;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.procedure.Gap;
import brightseam.procedure.Hold;
import java.time.Duration;
import java.util.Comparator;
import java.util.Optional;

/**
 * A load with a clock on it.
 *
 * @param label what opens its card: its basket, else the traveller
 * @param about tank, travellers and pieces in words
 * @param clock what runs
 * @param by whose badge began it
 */
record Running(String label, String about, Clock clock, BadgeId by) {

    /** For this long after a gap was broken it still comes first; our own choice. */
    private static final Duration BROKEN_HURRIES = Duration.ofMinutes(2);

    /** What runs on a load. */
    sealed interface Clock {

        /** The words beside the digits, which name the basket too. */
        String words();
    }

    /** A hold, within the limits of the whole load. */
    record Held(String words, Hold hold, Moment begun, String atMinimum, String atMaximum) implements Clock {}

    /** A gap to the step that {@code words} name. */
    record Hurried(String words, Gap gap, Moment since) implements Clock {}

    /**
     * What changes next comes first: a minimum that is reached, a maximum or a gap that is broken; what has just been
     * broken, or lies too long in a bath, before all of it. What is ready and cannot spoil comes last, and with it a
     * gap that was broken a while ago.
     */
    static Comparator<Running> byUrgency(Moment now) {
        return Comparator.comparing((Running one) -> one.turn(now).isEmpty())
                .thenComparing(one -> one.turn(now).orElse(now));
    }

    /** When its clock turns next, or turned to being broken; empty where it only counts up. */
    private Optional<Moment> turn(Moment now) {
        return switch (clock) {
            case Hurried gap -> Optional.of(gap.since().plus(gap.gap().maximum()))
                    .filter(latest -> now.isBefore(latest.plus(BROKEN_HURRIES)));
            case Held held -> {
                Moment earliest = held.begun().plus(held.hold().minimum());
                yield now.isBefore(earliest) ? Optional.of(earliest)
                        : held.hold().maximum().map(held.begun()::plus);
            }
        };
    }
}
