package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.people.Role;
import brightseam.procedure.Procedure;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.TravellerCommand.EnterChamber;
import brightseam.traveller.TravellerCommand.NoteLockPass;
import brightseam.traveller.TravellerCommand.SignWelding;
import brightseam.traveller.TravellerEvent.EnteredChamber;
import brightseam.traveller.TravellerEvent.PassedIn;
import brightseam.traveller.TravellerEvent.StepSigned;
import brightseam.traveller.TravellerEvent.StepStarted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** When pieces may be passed into the chamber in a session, and when their weld step may be signed. */
final class ChamberRules {

    private final Traveller traveller;
    private final Procedure procedure;

    ChamberRules(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
    }

    /** The step of {@code kind} that {@code procedure} leaves to a session. */
    static Optional<Step> inSession(Procedure procedure, StepKind kind) {
        return procedure.steps().stream().filter(step -> step.kind() == kind && step.inSession()).findFirst();
    }

    /** The same rules as at the bench, asked once: begun and signed in one. */
    Decision<TravellerEvent> enter(EnterChamber c) {
        Optional<Step> found = inSession(procedure, StepKind.PASS_IN);
        if (found.isEmpty()) {
            Step atTheBench = procedure.steps().stream().filter(step -> step.kind() == StepKind.PASS_IN)
                    .findFirst().orElseThrow();
            return Decision.refused(List.of(new TravellerRefusal.PassesInAtTheBench(
                    atTheBench.id(), procedure.ref().label())));
        }
        Step step = found.get();
        Optional<TravellerRefusal> second = SignRules.alreadySigned(traveller, step.id());
        if (second.isPresent()) {
            return Decision.refused(List.of(second.get()));
        }
        StepRules steps = new StepRules(traveller, procedure);
        Role role = signing(step);
        return Rules.check()
                .refuseFor(steps.outOfTurn(step))
                .refuseIf(traveller.isInQuarantine(), () -> QuarantineRules.stopped(traveller))
                .refuseFor(new BinRules(traveller, procedure).unfitFor(step))
                .refuseAll(PassIn.objections(traveller, procedure, step, c.origin().at()))
                .refuseAll(steps.notScanned(step, c.touching()))
                .refuseIf(!c.signer().has(role),
                        () -> new TravellerRefusal.RoleMissing(c.signer().badge(), List.of(role)))
                .refuseAll(c.objections())
                .acceptWith(() -> entered(step, c));
    }

    private List<TravellerEvent> entered(Step step, EnterChamber c) {
        List<TravellerEvent> events = new ArrayList<>();
        events.add(new StepStarted(c.origin(), step.id(), Optional.of(c.station()), true, step.gloves(),
                c.loadWith().stream().sorted().toList()));
        if (!c.touching().isEmpty()) {
            events.add(new TravellerEvent.ContactMade(c.origin(), step.id(), c.touching()));
        }
        events.add(new StepSigned(c.origin(), step.id(),
                Signature.under(traveller, procedure, c.signer(), Meaning.PERFORMED),
                c.loadWith().stream().sorted().toList()));
        events.add(new PassedIn(c.origin()));
        if (procedure.window().closedBy().equals(step.id())) {
            events.add(new TravellerEvent.WindowEnded(c.origin(), WindowEnd.PASSED_IN));
        }
        events.add(new EnteredChamber(c.origin(), c.session(), c.station(), c.way()));
        return events;
    }

    /** Whoever is on the other side is on the other side, whatever the rules say. */
    Decision<TravellerEvent> lockPass(NoteLockPass c) {
        return Decision.accepted(List.of(new TravellerEvent.LockPassed(c.origin(), c.pass())));
    }

    Decision<TravellerEvent> signWelding(SignWelding c) {
        Optional<Step> found = inSession(procedure, StepKind.WELD);
        if (found.isEmpty()) {
            return Decision.refused(List.of(new TravellerRefusal.NotWeldedByProcedure(
                    traveller.id(), procedure.ref().label())));
        }
        Step step = found.get();
        Optional<TravellerRefusal> second = SignRules.alreadySigned(traveller, step.id());
        if (second.isPresent()) {
            return Decision.refused(List.of(second.get()));
        }
        Role role = signing(step);
        SignRules signing = new SignRules(traveller, procedure);
        return Rules.check()
                .refuseAll(signing.unfinished(step))
                .refuseFor(traveller.burning().map(arc ->
                        new TravellerRefusal.ArcStillBurning(arc.joint(), arc.begunAt())))
                .refuseIf(!c.signer().has(role),
                        () -> new TravellerRefusal.RoleMissing(c.signer().badge(), List.of(role)))
                .refuseAll(c.objections())
                .acceptWith(() -> {
                    List<TravellerEvent> events = new ArrayList<>();
                    events.add(new StepSigned(c.origin(), step.id(),
                            Signature.under(traveller, procedure, c.signer(), Meaning.PERFORMED),
                            c.loadWith().stream().sorted().toList()));
                    events.addAll(signing.following(step, c.origin()));
                    return events;
                });
    }

    private static Role signing(Step step) {
        return step.signedBy() == SignedBy.LEAD ? Role.LEAD : Role.FABRICATOR;
    }
}
