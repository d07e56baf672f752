package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.procedure.Procedure;
import brightseam.traveller.TravellerCommand.SetApart;
import brightseam.traveller.TravellerEvent.PiecesSetApart;
import java.util.List;
import java.util.Optional;

/** When pieces may be set apart from their lot. The new traveller's own first event is made by {@link Parting}. */
final class LotRules {

    private final Traveller traveller;
    private final Procedure procedure;

    LotRules(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
    }

    Decision<TravellerEvent> setApart(SetApart c) {
        boolean known = has(traveller, c.pieces());
        Optional<StepRun> holding = traveller.runs().values().stream().filter(StepRun::isHolding).findFirst();
        return Rules.check()
                .refuseIf(c.child().equals(traveller.id()), () -> new TravellerRefusal.AlreadyReleased(c.child()))
                .refuseFor(holding.map(run -> new TravellerRefusal.HoldStillRunning(run.step())))
                .refuseFor(traveller.burning().map(arc ->
                        new TravellerRefusal.ArcStillBurning(arc.joint(), arc.begunAt())))
                .refuseIf(!known, () -> new TravellerRefusal.NoSuchPieces(c.pieces(), traveller.pieces()))
                .refuseIf(known && c.pieces().stream().distinct().count() == traveller.pieces().size(),
                        () -> new TravellerRefusal.NothingWouldRemain(c.pieces()))
                .refuseIf(c.reason().isBlank(), TravellerRefusal.ReasonMissing::new)
                .acceptWith(() -> List.of(new PiecesSetApart(c.origin(), c.child(),
                        c.pieces().stream().sorted().distinct().toList(), c.reason(),
                        Signature.under(traveller, procedure, c.signer(), Meaning.SEPARATED))));
    }

    static boolean has(Traveller traveller, List<Integer> pieces) {
        return !pieces.isEmpty() && traveller.pieces().containsAll(pieces);
    }
}
