package brightseam.traveller;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.Use;
import brightseam.traveller.TravellerCommand.ChangeGloves;
import brightseam.traveller.TravellerCommand.ReportGlovesSpent;
import java.util.List;
import java.util.Optional;

/** Gloves that touched something else than clean pieces come off; the pieces that they have not touched since stay. */
final class GloveRules {

    private final Traveller traveller;
    private final Procedure procedure;

    GloveRules(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
    }

    Decision<TravellerEvent> spent(ReportGlovesSpent c) {
        return Rules.check()
                .refuseIf(worn().isEmpty(), () -> new TravellerRefusal.NoCleanGlovesOn(traveller.id()))
                .refuseIf(c.what().isBlank(), TravellerRefusal.ReasonMissing::new)
                .acceptWith(() -> List.of(new TravellerEvent.GlovesSpent(c.origin(), c.what())));
    }

    Decision<TravellerEvent> change(ChangeGloves c) {
        Optional<Step> inHand = Uses.inHand(traveller, procedure);
        Optional<Use> asked = inHand.flatMap(step -> Uses.gloves(procedure, step));
        if (asked.isEmpty()) {
            return Decision.refused(List.of(new TravellerRefusal.NoCleanGlovesOn(traveller.id())));
        }
        Step step = inHand.get();
        return Rules.check()
                .refuseAll(c.objections())
                .refuseAll(Uses.missing(List.of(asked.get()), List.of(c.gloves())).stream()
                        .map(use -> new TravellerRefusal.ContactNotScanned(step.id(), use.kind(), use.type())).toList())
                .acceptWith(() -> List.of(
                        new TravellerEvent.ContactMade(c.origin(), step.id(), List.of(c.gloves()))));
    }

    /** Why {@code step} is not signed while the gloves that it is done in are spent. */
    Optional<TravellerRefusal> against(Step step) {
        return traveller.glovesSpent() && traveller.run(step.id()).isPresent()
                ? Uses.gloves(procedure, step)
                        .map(use -> new TravellerRefusal.ContactNotScanned(step.id(), ContactKind.GLOVES, use.type()))
                : Optional.empty();
    }

    /** The gloves that hands have on now: those of the step that was begun, else of the one that begins next. */
    private Optional<Use> worn() {
        return Uses.inHand(traveller, procedure).or(() -> new Course(traveller, procedure).startable())
                .flatMap(step -> Uses.gloves(procedure, step));
    }
}
