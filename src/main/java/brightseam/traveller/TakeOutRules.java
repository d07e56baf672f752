package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.Rules;
import brightseam.kernel.StepId;
import brightseam.people.Role;
import brightseam.procedure.Procedure;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.TravellerCommand.TakeOut;
import brightseam.traveller.TravellerEvent.HoldEnded;
import brightseam.traveller.TravellerEvent.NonconformanceOpened;
import brightseam.traveller.TravellerEvent.PiecesSetApart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When pieces may be taken out of a load, and what that brings about for them alone: their hold ends at that moment,
 * cut short where its minimum is not kept, so that the gap behind it runs for them too. The rest stays where it is.
 */
final class TakeOutRules {

    private static final List<Role> TAKING = List.of(Role.FABRICATOR, Role.LEAD, Role.INSPECTOR);

    private final Traveller traveller;
    private final Procedure procedure;

    TakeOutRules(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
    }

    Decision<TravellerEvent> takeOut(TakeOut c) {
        boolean known = LotRules.has(traveller, c.pieces());
        boolean whole = known && c.pieces().stream().distinct().count() == traveller.pieces().size();
        return Rules.check()
                .refuseIf(TAKING.stream().noneMatch(c.signer()::has),
                        () -> new TravellerRefusal.RoleMissing(c.signer().badge(), TAKING))
                .refuseIf(!whole && c.child().equals(traveller.id()),
                        () -> new TravellerRefusal.AlreadyReleased(c.child()))
                .refuseFor(traveller.burning().map(arc ->
                        new TravellerRefusal.ArcStillBurning(arc.joint(), arc.begunAt())))
                .refuseIf(!known, () -> new TravellerRefusal.NoSuchPieces(c.pieces(), traveller.pieces()))
                .refuseIf(c.reason().isBlank(), TravellerRefusal.ReasonMissing::new)
                .refuseAll(objections(c))
                .acceptWith(() -> whole ? leaving(c) : List.of(new PiecesSetApart(c.origin(), c.child(),
                        c.pieces().stream().sorted().distinct().toList(), c.reason(), signature(c))));
    }

    /** What happens to pieces that are all of this lot, and are all taken out. */
    List<TravellerEvent> leaving(TakeOut c) {
        List<TravellerEvent> events = outOfTheBath(c.origin(), c.reason());
        int number = traveller.after(events).nextNonconformance();
        StepId step = holding().map(StepRun::step).or(traveller::currentStep).orElse(procedure.route().getLast());
        events.add(new NonconformanceOpened(c.origin(), number, Cause.REPORTED, step, traveller.pass(step),
                traveller.pieces(), c.reason(), Optional.of(signature(c))));
        events.add(new TravellerEvent.PutInBin(c.origin(), c.bin().id(), c.bin().binClass(), c.bin().closed()));
        return events;
    }

    private List<TravellerEvent> outOfTheBath(Origin origin, String reason) {
        List<TravellerEvent> events = new ArrayList<>();
        holding().ifPresent(run -> {
            Moment earliest = Course.earliestEnd(procedure.step(run.step()).hold().orElseThrow(), run);
            if (origin.at().isBefore(earliest)) {
                events.add(new NonconformanceOpened(origin, traveller.nextNonconformance(), Cause.HOLD_CUT_SHORT,
                        run.step(), run.pass(), traveller.pieces(), reason, Optional.empty()));
            }
            events.add(new HoldEnded(origin, run.step()));
        });
        return events;
    }

    private List<? extends Refusal> objections(TakeOut c) {
        Traveller out = traveller.after(outOfTheBath(c.origin(), c.reason()));
        Decision<TravellerEvent> into = new BinRules(out, procedure)
                .putIn(new TravellerCommand.PutInBin(c.origin(), c.bin()));
        return into instanceof Decision.Refused<TravellerEvent> refused ? refused.refusals() : List.of();
    }

    private Optional<StepRun> holding() {
        return traveller.runs().values().stream().filter(StepRun::isHolding).findFirst();
    }

    private Signature signature(TakeOut c) {
        return Signature.under(traveller, procedure, c.signer(), Meaning.SEPARATED);
    }
}
