package brightseam.procedure;

import static brightseam.procedure.Rule.when;

import brightseam.procedure.Draft.HoldDraft;
import brightseam.procedure.Draft.StepDraft;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Rules about time: holds, gaps, and what an acid asks for. */
final class HoldRules {

    private static final Set<StepKind> TIMED = Set.of(StepKind.SOAK, StepKind.RINSE, StepKind.DRY);

    /** What gloved hands take to read a meter and key it in; our own estimate, on the long side. */
    private static final Duration READING_TIME = Duration.ofMinutes(2);

    private HoldRules() {}

    static Stream<Breach> aHoldEndsAfterItMay(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        Duration minimum = step.hold().flatMap(HoldDraft::minimum).orElse(Duration.ZERO);
        return maximum(step).stream().flatMap(maximum -> when(maximum.compareTo(minimum) <= 0,
                "/steps/" + place + "/hold/maximum",
                "a hold of at most " + DurationText.print(maximum) + " and at least " + DurationText.print(minimum),
                "a maximum above the minimum"));
    }

    static Stream<Breach> aGapHasAStepToFollow(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return when(step.gap().isPresent() && place == draft.steps().size() - 1, "/steps/" + place + "/gap",
                "a gap after the last step", "a step that follows, or no gap");
    }

    static Stream<Breach> wetAndDryStepsHaveAMinimum(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        boolean timed = step.hold().flatMap(HoldDraft::minimum).isPresent();
        return when(TIMED.contains(step.kind()) && !timed, "/steps/" + place + "/hold",
                "a " + RouteRules.word(step.kind()) + " without a shortest time", "a hold with a minimum");
    }

    static Stream<Breach> aSoakIsFollowedByARinse(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        boolean rinsed = place + 1 < draft.steps().size() && draft.steps().get(place + 1).kind() == StepKind.RINSE;
        return when(step.kind() == StepKind.SOAK && !rinsed, "/steps/" + place + "/kind",
                "a soak that no rinse follows", "a step of kind rinse next");
    }

    static Stream<Breach> anAcidSoakHasAMaximum(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return when(isAcidSoak(vocabulary, step) && maximum(step).isEmpty(), "/steps/" + place + "/hold",
                "an acid soak without a longest time", "a hold with a maximum");
    }

    static Stream<Breach> anAcidSoakHasAGap(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return when(isAcidSoak(vocabulary, step) && step.gap().isEmpty(), "/steps/" + place + "/station",
                "an acid soak without a gap to its rinse", "a gap with a maximum and a reason");
    }

    static Stream<Breach> aShortGapLeavesNoTimeToRead(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        Optional<Gap> before = before(draft, place);
        boolean hurried = isHurried(draft, place);
        return IntStream.range(0, step.readings().size()).boxed().flatMap(i -> when(
                hurried && step.readings().get(i).beforeHold().orElse(false),
                "/steps/" + place + "/readings/" + i + "/before_hold",
                "a reading before the hold of a step that has to begin within "
                        + before.map(Gap::maximum).map(DurationText::print).orElse(""),
                "false: it is read after the hold"));
    }

    /** Whether the step at {@code place} has to begin too soon after the one before for anything but itself. */
    static boolean isHurried(Draft draft, int place) {
        return before(draft, place).filter(gap -> gap.maximum().compareTo(READING_TIME) <= 0).isPresent();
    }

    private static Optional<Gap> before(Draft draft, int place) {
        return place == 0 ? Optional.empty() : draft.steps().get(place - 1).gap();
    }

    private static boolean isAcidSoak(Vocabulary vocabulary, StepDraft step) {
        return step.kind() == StepKind.SOAK
                && Optional.ofNullable(vocabulary.stations().get(step.station()))
                        .filter(Vocabulary.StationClass::acid)
                        .isPresent();
    }

    private static Optional<Duration> maximum(StepDraft step) {
        return step.hold().flatMap(HoldDraft::maximum);
    }
}
