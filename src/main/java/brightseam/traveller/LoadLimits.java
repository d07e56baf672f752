package brightseam.traveller;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;

import brightseam.kernel.Limits;
import brightseam.kernel.StepId;
import brightseam.procedure.BinClass;
import brightseam.procedure.Gap;
import brightseam.procedure.Hold;
import brightseam.procedure.Mix;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.procedure.Use;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * What a load asks for at a step that its travellers do together, each by its own procedure: the tightest of it all.
 * Whoever keeps these limits keeps every procedure's own; each traveller is still decided by its own.
 */
public final class LoadLimits {

    private LoadLimits() {}

    /** Something about which the steps of a load cannot be brought together. */
    public enum Clash {
        /** A minimum is not below another's maximum. */
        HOLD,
        /** No value of a reading is in order for all. */
        READING,
        /** Different gloves are asked for. */
        GLOVES,
        /** No class of bin suits all. */
        BINS
    }

    /**
     * What makes steps of several procedures one step as hands see it. Times, limits, cautions, gloves and words may
     * differ.
     *
     * @param readings name, unit and place before or after the hold of each, in order
     */
    public record Likeness(
            StepId id, StepKind kind, String station, SignedBy signedBy, boolean held, List<List<Object>> readings) {

        /** That of {@code step}. */
        public static Likeness of(Step step) {
            return new Likeness(step.id(), step.kind(), step.station(), step.signedBy(), step.hold().isPresent(),
                    step.readings().stream().map(spec -> List.<Object>of(spec.id(), spec.unit(), spec.beforeHold()))
                            .toList());
        }
    }

    /** Whether both are one step as hands see it. */
    public static boolean isSame(Step one, Step other) {
        return Likeness.of(one).equals(Likeness.of(other));
    }

    /**
     * The tightest of {@code steps}, at least one and all the same: the longest minimum, the shortest maximum and gap,
     * readings inside every limit, every caution, need and supply, gloves where any asks for them, bins that suit all.
     * Number, title and instruction are the first one's. Empty where they {@linkplain #clashes clash}.
     */
    public static Optional<Step> tightest(List<Step> steps) {
        Step first = steps.getFirst();
        if (steps.stream().allMatch(first::equals)) {
            return Optional.of(first);
        }
        return clashes(steps).isEmpty() ? Optional.of(joined(first, steps)) : Optional.empty();
    }

    /** About what {@code steps}, all the same, cannot be brought together. */
    public static Set<Clash> clashes(List<Step> steps) {
        Set<Clash> clashes = new TreeSet<>();
        boolean tooShort = maximum(steps).filter(longest -> longest.compareTo(minimum(steps)) <= 0).isPresent();
        if (tooShort && steps.getFirst().hold().isPresent()) {
            clashes.add(Clash.HOLD);
        }
        if (!unmet(steps).isEmpty()) {
            clashes.add(Clash.READING);
        }
        if (gloves(steps).size() > 1) {
            clashes.add(Clash.GLOVES);
        }
        if (bins(steps).isEmpty()) {
            clashes.add(Clash.BINS);
        }
        return clashes;
    }

    /** Labels of the readings of which no value is in order for all of {@code steps}. */
    static List<String> unmet(List<Step> steps) {
        return IntStream.range(0, steps.getFirst().readings().size())
                .filter(i -> isEmpty(specs(steps, i)))
                .mapToObj(i -> steps.getFirst().readings().get(i).label()).toList();
    }

    /** The different gloves that {@code steps} ask for, sorted. */
    static List<String> gloves(List<Step> steps) {
        return steps.stream().flatMap(step -> step.gloves().stream()).distinct().sorted().toList();
    }

    private static Step joined(Step first, List<Step> steps) {
        return new Step(first.id(), first.number(), first.title(), first.kind(), first.station(), first.instruction(),
                all(steps, Step::cautions), bins(steps), gloves(steps).stream().findFirst(), all(steps, Step::needs),
                uses(steps),
                first.hold().map(held -> new Hold(minimum(steps), maximum(steps))), gap(steps),
                IntStream.range(0, first.readings().size()).mapToObj(i -> reading(specs(steps, i))).toList(),
                first.signedBy(), first.reworkTo(), all(steps, Step::sources),
                steps.stream().map(Step::mix).max(Comparator.naturalOrder()).orElse(Mix.ANY),
                first.inSession());
    }

    private static Duration minimum(List<Step> steps) {
        return steps.stream().flatMap(step -> step.hold().stream()).map(Hold::minimum)
                .max(Comparator.naturalOrder()).orElse(Duration.ZERO);
    }

    private static Optional<Duration> maximum(List<Step> steps) {
        return steps.stream().flatMap(step -> step.hold().stream()).flatMap(hold -> hold.maximum().stream())
                .min(Comparator.naturalOrder());
    }

    private static Optional<Gap> gap(List<Step> steps) {
        return steps.stream().flatMap(step -> step.gap().stream()).min(Comparator.comparing(Gap::maximum));
    }

    /** Classes that suit every step; a step that names none admits any. */
    private static Set<BinClass> bins(List<Step> steps) {
        Set<BinClass> common = EnumSet.allOf(BinClass.class);
        steps.stream().map(Step::bins).filter(named -> !named.isEmpty()).forEach(common::retainAll);
        return common;
    }

    private static List<String> all(List<Step> steps, Function<Step, List<String>> of) {
        return steps.stream().map(of).flatMap(Collection::stream).distinct().toList();
    }

    /** Every thing that any of the steps asks for, taken new where any asks for that. */
    private static List<Use> uses(List<Step> steps) {
        List<Use> all = steps.stream().flatMap(step -> step.uses().stream()).toList();
        return all.stream().map(use -> new Use(use.kind(), use.type(), all.stream().anyMatch(other ->
                other.kind() == use.kind() && other.type().equals(use.type()) && other.change()))).distinct().toList();
    }

    private static List<ReadingSpec> specs(List<Step> steps, int place) {
        return steps.stream().map(step -> step.readings().get(place)).toList();
    }

    private static ReadingSpec reading(List<ReadingSpec> specs) {
        ReadingSpec first = specs.getFirst();
        return new ReadingSpec(first.id(), first.label(), first.unit(),
                new Limits(highestMinimum(specs), lowestMaximum(specs)), decimals(specs), first.beforeHold());
    }

    private static int decimals(List<ReadingSpec> specs) {
        return specs.stream().mapToInt(ReadingSpec::decimals).min().orElse(0);
    }

    private static Optional<BigDecimal> highestMinimum(List<ReadingSpec> specs) {
        return end(specs, Limits::minimum, BigDecimal::max);
    }

    private static Optional<BigDecimal> lowestMaximum(List<ReadingSpec> specs) {
        return end(specs, Limits::maximum, BigDecimal::min);
    }

    private static Optional<BigDecimal> end(
            List<ReadingSpec> specs, Function<Limits, Optional<BigDecimal>> which, BinaryOperator<BigDecimal> tighter) {
        return specs.stream().map(ReadingSpec::limits).map(which).flatMap(Optional::stream).reduce(tighter);
    }

    /** Whether no value lies inside every limit that can be written with the fewest decimals. */
    private static boolean isEmpty(List<ReadingSpec> specs) {
        Optional<BigDecimal> low = highestMinimum(specs).map(end -> end.setScale(decimals(specs), CEILING));
        Optional<BigDecimal> high = lowestMaximum(specs).map(end -> end.setScale(decimals(specs), FLOOR));
        return low.isPresent() && high.isPresent() && high.get().compareTo(low.get()) < 0;
    }
}
