package brightseam.procedure;

import static brightseam.procedure.Rule.when;

import brightseam.procedure.Draft.StepDraft;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Rules about the route: its steps, their order, who passes them and where they send pieces back to. */
final class RouteRules {

    /**
     * In characters; the shop's own choice. About three lines of the bench card's type (1.75rem in
     * {@code frontend/shop.css}) on a tablet held upright, 800 px wide, reckoned at half an em for a character.
     */
    static final int INSTRUCTION_LENGTH_MAX = 150;

    private RouteRules() {}

    static Stream<Breach> stepNamesAreUnique(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return when(draft.position(step.id()) < place, "/steps/" + place + "/id",
                "a second step named " + step.id(), "a name that no other step has");
    }

    static Stream<Breach> stepNumbersRise(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        int before = place == 0 ? 0 : draft.steps().get(place - 1).number();
        return when(step.number() <= before, "/steps/" + place + "/number",
                "step number " + step.number(), "a number above " + before);
    }

    static Stream<Breach> aReturnNamesAStep(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return eachReturn(step, place, (target, at) -> when(draft.position(target) < 0, at,
                "rework returns to " + target + ", which is not a step here", "the name of an earlier step"));
    }

    static Stream<Breach> aReturnLeadsBack(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return eachReturn(step, place, (target, at) -> when(draft.position(target) >= place, at,
                "rework returns to " + target + ", which is not before " + step.id(), "the name of an earlier step"));
    }

    static Stream<Breach> anInspectionIsStamped(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return when(step.kind() == StepKind.INSPECTION && step.signedBy() != SignedBy.INSPECTOR,
                "/steps/" + place + "/signed_by", "an inspection signed by a " + word(step.signedBy()), "inspector");
    }

    static Stream<Breach> thereIsOnePassIn(Draft draft, Vocabulary vocabulary) {
        List<Integer> passIns = places(draft, StepKind.PASS_IN);
        if (passIns.isEmpty()) {
            return Stream.of(new Breach("/steps", "no step of kind pass-in", "exactly one"));
        }
        return passIns.stream().skip(1).map(place ->
                new Breach("/steps/" + place + "/kind", "a second step of kind pass-in", "exactly one"));
    }

    static Stream<Breach> weldingComesAfterPassIn(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        boolean early = places(draft, StepKind.PASS_IN).stream().noneMatch(passIn -> passIn < place);
        return when(step.kind() == StepKind.WELD && early, "/steps/" + place + "/kind",
                "welding before the pass-in", "weld steps behind the pass-in");
    }

    static Stream<Breach> anInspectorCloses(Draft draft, Vocabulary vocabulary) {
        int last = draft.steps().size() - 1;
        return when(draft.steps().get(last).kind() != StepKind.INSPECTION, "/steps/" + last + "/kind",
                "a last step of kind " + word(draft.steps().get(last).kind()),
                "inspection: an inspector's stamp closes the traveller");
    }

    static Stream<Breach> theStationDoesSuchSteps(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return Stream.ofNullable(vocabulary.stations().get(step.station()))
                .flatMap(station -> when(!station.kinds().contains(step.kind()), "/steps/" + place + "/kind",
                        "a step of kind " + word(step.kind()) + " at " + station.key(),
                        station.kinds().stream().map(RouteRules::word).sorted().collect(Collectors.joining(" or "))));
    }

    static Stream<Breach> theInstructionFitsThreeLines(
            Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        int length = step.instruction().strip().length();
        return when(length > INSTRUCTION_LENGTH_MAX, "/steps/" + place + "/instruction",
                "an instruction of " + length + " characters",
                "at most " + INSTRUCTION_LENGTH_MAX + ": about three lines on the bench");
    }

    static Stream<Breach> aMixNeedsABasket(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return when(step.mix().isPresent() && !step.bins().contains(BinClass.PROCESS_BASKET),
                "/steps/" + place + "/mix", "a mix where no basket is", "bins with process-basket, or no mix");
    }

    static List<Integer> places(Draft draft, StepKind kind) {
        return IntStream.range(0, draft.steps().size())
                .filter(place -> draft.steps().get(place).kind() == kind)
                .boxed()
                .toList();
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private interface ReturnCheck {
        Stream<Breach> breaches(String target, String at);
    }

    private static Stream<Breach> eachReturn(StepDraft step, int place, ReturnCheck check) {
        return IntStream.range(0, step.reworkTo().size())
                .boxed()
                .flatMap(i -> check.breaches(step.reworkTo().get(i), "/steps/" + place + "/rework_to/" + i));
    }
}
