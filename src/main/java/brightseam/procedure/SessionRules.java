package brightseam.procedure;

import static brightseam.procedure.Rule.when;

import brightseam.procedure.Draft.StepDraft;
import java.util.stream.Stream;

/** Rules about steps that are done in a chamber session, which measures and writes down what belongs to them. */
final class SessionRules {

    private SessionRules() {}

    static Stream<Breach> onlyLockAndChamberAreInSession(
            Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        boolean may = step.kind() == StepKind.PASS_IN || step.kind() == StepKind.WELD;
        return when(step.isInSession() && !may, "/steps/" + place + "/in_session",
                "a step of kind " + RouteRules.word(step.kind()) + " in a chamber session", "pass-in or weld");
    }

    static Stream<Breach> weldingIsDoneInASession(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return when(step.kind() == StepKind.WELD && !step.isInSession(), "/steps/" + place + "/kind",
                "welding outside a chamber session", "in_session: true");
    }

    static Stream<Breach> aSessionBeginsWithThePassIn(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        boolean welded = draft.steps().stream().anyMatch(other -> other.kind() == StepKind.WELD);
        return when(step.kind() == StepKind.PASS_IN && welded && !step.isInSession(), "/steps/" + place + "/kind",
                "a pass-in outside the session that welds", "in_session: true");
    }

    /** What the meters and the session write down is not typed, timed or scanned a second time. */
    static Stream<Breach> aSessionKeepsItsOwnRecord(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        if (!step.isInSession()) {
            return Stream.empty();
        }
        String at = "/steps/" + place;
        return Stream.of(
                when(!step.readings().isEmpty(), at + "/readings", "readings by hand in a chamber session",
                        "no readings: the session's meters are read"),
                when(step.hold().isPresent(), at + "/hold", "a hold in a chamber session",
                        "no hold: the session keeps its times"),
                when(step.gap().isPresent(), at + "/gap", "a gap behind a step in a chamber session", "no gap"),
                when(step.kind() == StepKind.WELD && !step.uses().isEmpty(), at + "/uses",
                        "a scan before welding in a chamber session", "no uses: the session knows what is inside"))
                .flatMap(breach -> breach);
    }

    /** Behind a pass-in in a session the pieces lie in no bin any more. */
    static Stream<Breach> binsAreNamedUpToTheSession(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        boolean inside = draft.steps().subList(0, place).stream()
                .anyMatch(earlier -> earlier.kind() == StepKind.PASS_IN && earlier.isInSession());
        return when(step.bins().isEmpty() && !inside, "/steps/" + place,
                "no bins", "bins: a list of at least one class of bin");
    }
}
