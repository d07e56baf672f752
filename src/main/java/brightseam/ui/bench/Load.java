package brightseam.ui.bench;

import brightseam.kernel.BinId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.Step;
import brightseam.procedure.Use;
import brightseam.traveller.GapClock;
import brightseam.traveller.Guide;
import brightseam.traveller.LoadLimits;
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

    /** Where a traveller stands: those at the same point can be worked on together, whatever their procedure. */
    private record Point(Class<?> action, Optional<LoadLimits.Likeness> step, Optional<String> reading) {
        static Point of(Card card) {
            NextAction next = card.next();
            return new Point(next.getClass(), next.about().map(LoadLimits.Likeness::of),
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

    /** The one thing to do now, within the limits that every one of them keeps. */
    NextAction next() {
        return new Tightest(this).of(first().next());
    }

    /** The step named {@code step} as all of them ask for it; as the first one does where that cannot be met. */
    Step step(StepId step) {
        return LoadLimits.tightest(together.stream().flatMap(card -> card.procedure().find(step).stream()).toList())
                .orElseGet(() -> first().procedure().step(step));
    }

    /** The gap that runs, of the one that is hurried most. */
    Optional<GapClock> gap() {
        return together.stream().flatMap(card -> Guide.gap(card.traveller(), card.procedure()).stream())
                .min(Comparator.comparing(GapClock::latest));
    }

    /** The number that people call {@code step} by, with those that other procedures of the load give it. */
    String number(Step step) {
        String others = together.stream().filter(card -> numberOf(card, step) != step.number())
                .map(card -> card.id() + ": " + numberOf(card, step)).collect(Collectors.joining(", "));
        return others.isEmpty() ? String.valueOf(step.number()) : step.number() + " (" + others + ")";
    }

    private static int numberOf(Card card, Step step) {
        return card.procedure().find(step.id()).map(Step::number).orElse(step.number());
    }

    /** The step that {@code next} is about, where it is about one. */
    static Optional<Step> stepOf(NextAction next) {
        return next.about();
    }
}
