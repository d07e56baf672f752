package brightseam.traveller;

import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.traveller.TravellerEvent.NonconformanceOpened;
import brightseam.traveller.TravellerEvent.StepEnteredLate;
import java.util.Optional;

/** Reads late entries like an auditor: nothing that has a clock of its own is entered after it was done. */
final class LateCheck {

    private LateCheck() {}

    static Optional<String> finding(Procedure procedure, TravellerEvent event) {
        if (event instanceof NonconformanceOpened opened) {
            return opened.cause() == Nonconformance.Cause.TIME_NOT_OBSERVED
                    && procedure.step(opened.step()).gap().isEmpty()
                    ? Optional.of("a time not observed where none is limited") : Optional.empty();
        }
        return event instanceof StepEnteredLate late ? late(procedure.step(late.step()), procedure, late)
                : Optional.empty();
    }

    private static Optional<String> late(Step step, Procedure procedure, StepEnteredLate late) {
        if (step.hold().isPresent()) {
            return Optional.of("a hold that nobody saw");
        }
        if (procedure.window().openedBy().equals(step.id())) {
            return Optional.of("a window that begins too late");
        }
        if (late.doneAt().isAfter(late.at().wall())) {
            return Optional.of("done in the future");
        }
        boolean said = !late.reason().isBlank() && late.signature().meaning() == Meaning.STATED_LATE;
        return said ? Optional.empty() : Optional.of("late without a word");
    }
}
