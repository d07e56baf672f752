package brightseam.traveller;

import brightseam.kernel.ContactKind;
import brightseam.kernel.StepId;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.Use;
import brightseam.traveller.TravellerEvent.ContactMade;
import brightseam.traveller.TravellerEvent.GlovesSpent;
import brightseam.traveller.TravellerEvent.SetApart;
import brightseam.traveller.TravellerEvent.StepSigned;
import brightseam.traveller.TravellerEvent.StepStarted;
import brightseam.traveller.TravellerEvent.TouchReported;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Of a record that is read by {@link RecordCheck}: that everything was scanned, and no spent gloves went on. */
final class HandsCheck {

    private final Procedure procedure;
    private final List<String> unscanned = new ArrayList<>();
    private boolean spent;

    HandsCheck(Procedure procedure) {
        this.procedure = procedure;
    }

    /** What {@code event} shows to be wrong with the hands until then. */
    Optional<String> finding(TravellerEvent event) {
        if (event instanceof SetApart) {
            return Optional.empty();
        }
        boolean lacking = !(event instanceof ContactMade) && !unscanned.isEmpty();
        String lacks = "begun without a scan of " + unscanned;
        unscanned.clear();
        switch (event) {
            case StepStarted e -> asked(procedure.step(e.step()));
            case ContactMade e -> spent &= e.contacts().stream().noneMatch(one -> one.kind() == ContactKind.GLOVES);
            case TouchReported e -> spent = true;
            case GlovesSpent e -> spent = true;
            case StepSigned e -> {
                if (spent && inCleanGloves(e.step())) {
                    return Optional.of("signed in spent gloves");
                }
            }
            default -> { }
        }
        return lacking ? Optional.of(lacks) : Optional.empty();
    }

    private void asked(Step step) {
        step.uses().stream().map(Use::type).forEach(unscanned::add);
    }

    private boolean inCleanGloves(StepId id) {
        int first = procedure.steps().stream().filter(step -> step.uses().stream().anyMatch(Use::change))
                .map(step -> procedure.position(step.id())).findFirst().orElse(Integer.MAX_VALUE);
        return procedure.position(id) >= first && procedure.step(id).gloves().isPresent();
    }
}
