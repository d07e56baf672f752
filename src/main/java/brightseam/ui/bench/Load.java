package brightseam.ui.bench;

import brightseam.kernel.BinId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.ProcedureRef;
import brightseam.procedure.Step;
import brightseam.procedure.Use;
import brightseam.traveller.NextAction;
import brightseam.traveller.Uses;
import brightseam.traveller.shell.Card;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What is worked on together: one traveller, or all in a bin that stand at the same point.
 *
 * @param label what was scanned to open it
 * @param bin the bin that they share, where they are worked on as its contents
 * @param together at least one, sorted by label
 * @param apart others in the bin that stand elsewhere
 */
record Load(String label, Optional<BinId> bin, List<Card> together, List<Card> apart) {

    Load {
        together = List.copyOf(together);
        apart = List.copyOf(apart);
    }

    /** Where a traveller stands: those at the same point can be worked on together. */
    private record Point(ProcedureRef procedure, Class<?> action, Optional<StepId> step, Optional<String> reading) {
        static Point of(Card card) {
            NextAction next = card.next();
            return new Point(card.procedure().ref(), next.getClass(), stepOf(next).map(Step::id),
                    next instanceof NextAction.Read read ? Optional.of(read.reading().id()) : Optional.empty());
        }
    }

    /** {@code asked} with those of {@code mates}, the others in its bin, that stand at the same point. */
    static Load around(Card asked, Optional<BinId> bin, List<Card> mates) {
        return split(asked.id().value(), bin, mates, Point.of(asked));
    }

    /** Most of what is in {@code bin}; empty where nothing is. */
    static Optional<Load> in(BinId bin, List<Card> inside) {
        Map<Point, Long> counts = inside.stream().collect(Collectors.groupingBy(Point::of, Collectors.counting()));
        return inside.stream().map(Point::of).max(Comparator.comparing(counts::get))
                .map(point -> split(bin.value(), Optional.of(bin), inside, point));
    }

    private static Load split(String label, Optional<BinId> bin, List<Card> all, Point point) {
        Map<TravellerId, Card> sorted = new TreeMap<>();
        all.forEach(card -> sorted.put(card.id(), card));
        Map<Boolean, List<Card>> parted = sorted.values().stream()
                .collect(Collectors.partitioningBy(card -> Point.of(card).equals(point)));
        return new Load(label, bin, parted.get(true), parted.get(false));
    }

    /** The one that the card is drawn from; the others stand at the same point. */
    Card first() {
        return together.getFirst();
    }

    /** Their labels. */
    List<TravellerId> ids() {
        return together.stream().map(Card::id).toList();
    }

    /** What touches any of the pieces at {@code step} and is scanned before it begins. */
    List<Use> asked(Step step) {
        return together.stream().flatMap(card -> Uses.asked(card.traveller(), card.procedure(), step).stream())
                .distinct().toList();
    }

    /** The step that {@code next} is about, where it is about one. */
    static Optional<Step> stepOf(NextAction next) {
        return switch (next) {
            case NextAction.PutInto at -> Optional.of(at.step());
            case NextAction.CloseBin at -> Optional.of(at.step());
            case NextAction.Begin at -> Optional.of(at.step());
            case NextAction.Read at -> Optional.of(at.step());
            case NextAction.BeginHold at -> Optional.of(at.step());
            case NextAction.Holding at -> Optional.of(at.step());
            case NextAction.Sign at -> Optional.of(at.step());
            case NextAction.AwaitStamp at -> Optional.of(at.step());
            case NextAction.AwaitDisposition open -> Optional.empty();
            case NextAction.Ended ended -> Optional.empty();
        };
    }
}
