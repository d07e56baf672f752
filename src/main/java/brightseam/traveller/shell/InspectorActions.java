package brightseam.traveller.shell;

import brightseam.bins.BinCommand;
import brightseam.bins.shell.Bins;
import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.people.Signer;
import brightseam.traveller.Disposition;
import brightseam.traveller.Meaning;
import brightseam.traveller.Parting;
import brightseam.traveller.Placement;
import brightseam.traveller.Signature;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerCommand;
import brightseam.traveller.TravellerEvent;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/**
 * What inspectors and leads do to a traveller: stamp, reject, decide on nonconformances, set pieces apart. Stored and
 * refused as in {@link TravellerActions}.
 */
@Service
public class InspectorActions {

    private final Transactions transactions;
    private final Travellers travellers;
    private final Bins bins;
    private final Entitlement entitlement;

    InspectorActions(Transactions transactions, Travellers travellers, Bins bins, Entitlement entitlement) {
        this.transactions = transactions;
        this.travellers = travellers;
        this.bins = bins;
        this.entitlement = entitlement;
    }

    /** Stamps the inspection point {@code step}. */
    public Outcome<List<Traveller>> stamp(Actor actor, TravellerId id, StepId step, Signer signer, String remark) {
        return transactions.run(actor, "stamp", List.of(id), (origin, card) -> new TravellerCommand.StampStep(
                origin, step, signer, remark,
                entitlement.objections(signer.badge(), card.procedure().find(step), origin)));
    }

    /** Rejects {@code pieces} at the inspection point {@code step}: quarantine. */
    public Outcome<List<Traveller>> reject(
            Actor actor, TravellerId id, StepId step, Signer signer, List<Integer> pieces, String reason) {
        return transactions.run(actor, "reject", List.of(id), (origin, card) -> new TravellerCommand.RejectStep(
                origin, step, signer, pieces, reason,
                entitlement.objections(signer.badge(), card.procedure().find(step), origin)));
    }

    /** Decides what becomes of nonconformance {@code number}; {@code returnTo} goes with rework alone. */
    public Outcome<List<Traveller>> decide(Actor actor, TravellerId id, int number, Disposition disposition,
            Optional<StepId> returnTo, String reason, Signer signer) {
        return transactions.run(actor, "decide", List.of(id), (origin, card) -> new TravellerCommand.Decide(
                origin, number, disposition, returnTo, reason, signer));
    }

    /** Sets {@code pieces} apart as a traveller of their own, in the same bin; answers the new one. */
    public Outcome<Traveller> setApart(
            Actor actor, TravellerId id, List<Integer> pieces, String reason, Signer signer) {
        return transactions.noted(actor, "set apart", List.of(id), transactions.commit(origin -> {
            TravellerId child = freeLabel(id);
            Optional<Placement> placement = travellers.find(id).flatMap(card -> card.traveller().placement());
            Prepared<Traveller> parent = transactions.prepare(id, card ->
                    new TravellerCommand.SetApart(origin, child, pieces, reason, signer));
            if (parent instanceof Prepared.Refused<Traveller> refused) {
                return refused;
            }
            Prepared<Traveller> parts = parent.with(child(id, child, pieces, reason, signer, origin),
                    (old, made) -> made);
            return placement.isEmpty() ? parts : parts.with(bins.prepare(
                    new BinCommand.PutIn(placement.get().bin(), child,
                            placement.get().binClass().isClean(), origin)), (made, bin) -> made);
        }, actor));
    }

    private Prepared<Traveller> child(TravellerId id, TravellerId child, List<Integer> pieces, String reason,
            Signer signer, Origin origin) {
        Card parent = travellers.find(id).orElseThrow();
        List<TravellerEvent> history = travellers.record(id).stream()
                .map(RecordedEvent::event).limit(parent.version()).toList();
        TravellerEvent.PiecesSetApart parting = new TravellerEvent.PiecesSetApart(origin, child,
                pieces.stream().sorted().distinct().toList(), reason,
                new Signature(signer, Meaning.SEPARATED));
        return travellers.streams().prepare(child, none -> Decision.accepted(
                List.of(Parting.child(parent.traveller(), history, parting))));
    }

    private TravellerId freeLabel(TravellerId id) {
        for (int n = 1; ; n++) {
            TravellerId label = new TravellerId(id.value() + "." + n);
            if (travellers.find(label).isEmpty()) {
                return label;
            }
        }
    }
}
