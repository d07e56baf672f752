package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.traveller.TravellerCommand.SetApart;
import brightseam.traveller.TravellerEvent.PiecesSetApart;
import java.util.List;
import java.util.Optional;

/** When pieces may be set apart from their lot. The new traveller's own first event is made by {@link Parting}. */
final class LotRules {

    private final Traveller traveller;

    LotRules(Traveller traveller) {
        this.traveller = traveller;
    }

    Decision<TravellerEvent> setApart(SetApart c) {
        boolean known = has(traveller, c.pieces());
        Optional<StepRun> holding = traveller.runs().values().stream().filter(StepRun::isHolding).findFirst();
        return new Broken()
                .when(c.child().equals(traveller.id()), () -> new TravellerRefusal.AlreadyReleased(c.child()))
                .add(holding.map(run -> new TravellerRefusal.HoldStillRunning(run.step())))
                .when(!known, () -> new TravellerRefusal.NoSuchPieces(c.pieces(), traveller.pieces()))
                .when(known && c.pieces().stream().distinct().count() == traveller.pieces().size(),
                        () -> new TravellerRefusal.NothingWouldRemain(c.pieces()))
                .when(c.reason().isBlank(), TravellerRefusal.ReasonMissing::new)
                .orElse(() -> List.of(new PiecesSetApart(c.origin(), c.child(),
                        c.pieces().stream().sorted().distinct().toList(), c.reason(),
                        new Signature(c.signer(), Meaning.SEPARATED))));
    }

    static boolean has(Traveller traveller, List<Integer> pieces) {
        return !pieces.isEmpty() && traveller.pieces().containsAll(pieces);
    }
}
