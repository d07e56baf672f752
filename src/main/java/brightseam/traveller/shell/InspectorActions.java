package brightseam.traveller.shell;

import brightseam.bins.BinCommand;
import brightseam.bins.shell.Bins;
import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.people.Signer;
import brightseam.people.shell.SignedWork;
import brightseam.traveller.Disposition;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerCommand;
import brightseam.traveller.TravellerDecider;
import brightseam.traveller.TravellerEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
    private final Partings partings;
    private final ChamberRecord chamber;

    InspectorActions(Transactions transactions, Travellers travellers, Bins bins, Entitlement entitlement,
            Partings partings, ChamberRecord chamber) {
        this.transactions = transactions;
        this.travellers = travellers;
        this.bins = bins;
        this.entitlement = entitlement;
        this.partings = partings;
        this.chamber = chamber;
    }

    /** Stamps the inspection point {@code step}. */
    public Outcome<List<Traveller>> stamp(Actor actor, TravellerId id, StepId step, Signer signer, String remark) {
        return transactions.run(actor, "stamp", List.of(id), (origin, card) -> new TravellerCommand.StampStep(
                origin, step, signer, remark, Stream.concat(
                        entitlement.objections(signer.badge(), card.procedure().find(step), origin).stream(),
                        card.procedure().find(step).stream().flatMap(found ->
                                chamber.unfinished(id, found, origin).stream())).toList()));
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
                origin, number, disposition, returnTo, reason, signer), origin -> mayDecide(signer, origin));
    }

    /** Decides the same of one nonconformance of each of {@code numbers}, with one signature: all of them or none. */
    public Outcome<List<Traveller>> decideTogether(Actor actor, Map<TravellerId, Integer> numbers,
            Disposition disposition, Optional<StepId> returnTo, String reason, Signer signer) {
        return transactions.run(actor, "decide together", numbers.keySet(), (origin, card) ->
                new TravellerCommand.Decide(
                        origin, numbers.get(card.id()), disposition, returnTo, reason, signer),
                origin -> mayDecide(signer, origin));
    }

    private Prepared<?> mayDecide(Signer signer, Origin origin) {
        List<Refusal> against = entitlement.objections(signer.badge(), SignedWork.DISPOSITION, origin);
        return against.isEmpty() ? Transactions.nothing() : new Prepared.Refused<>(against);
    }

    /** Sets {@code pieces} apart as a traveller of their own, in the same bin; answers the new one. */
    public Outcome<Traveller> setApart(
            Actor actor, TravellerId id, List<Integer> pieces, String reason, Signer signer) {
        return transactions.noted(actor, "set apart", List.of(id), transactions.commit(origin -> {
            Optional<Card> parent = travellers.find(id);
            if (parent.isEmpty()) {
                return new Prepared.Refused<>(List.of(new ShopRefusal.TravellerUnknown(id)));
            }
            TravellerCommand.SetApart command = new TravellerCommand.SetApart(
                    origin, partings.freeLabel(id), pieces, reason, signer);
            Decision<TravellerEvent> decision = TravellerDecider.decide(
                    parent.map(Card::traveller), parent.get().procedure(), command);
            return switch (Transactions.asSeen(id, Optional.ofNullable(actor.seen().get(id)), decision)) {
                case Decision.Refused<TravellerEvent> refused -> new Prepared.Refused<>(refused.refusals());
                case Decision.Accepted<TravellerEvent> accepted -> parted(parent.get(), accepted.events(), command);
            };
        }, actor));
    }

    private Prepared<Traveller> parted(Card parent, List<TravellerEvent> decided, TravellerCommand.SetApart command) {
        Prepared<Traveller> parts = partings.prepare(parent, decided, command);
        return parent.traveller().placement()
                .map(where -> parts.with(bins.prepare(new BinCommand.SetApartInside(where.bin(), parent.id(),
                        command.child(), where.binClass().isClean(), command.origin())), (child, bin) -> child))
                .orElse(parts);
    }
}
