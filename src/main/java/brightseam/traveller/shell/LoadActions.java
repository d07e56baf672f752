package brightseam.traveller.shell;

import brightseam.bins.BinCommand;
import brightseam.bins.shell.Bins;
import brightseam.kernel.BinId;
import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.people.Signer;
import brightseam.traveller.Placement;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerCommand;
import brightseam.traveller.TravellerCommand.BinFact;
import brightseam.traveller.TravellerDecider;
import brightseam.traveller.TravellerEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** What a person does to a load without stopping it. Stored and refused as in {@link TravellerActions}. */
@Service
public class LoadActions {

    private final Transactions transactions;
    private final Travellers travellers;
    private final Partings partings;
    private final Basketfuls basketfuls;
    private final Bins bins;
    private final LotSizes sizes;

    LoadActions(Transactions transactions, Travellers travellers, Partings partings, Basketfuls basketfuls, Bins bins,
            LotSizes sizes) {
        this.transactions = transactions;
        this.travellers = travellers;
        this.partings = partings;
        this.basketfuls = basketfuls;
        this.bins = bins;
        this.sizes = sizes;
    }

    /**
     * Takes {@code pieces} of {@code id} out of their load and into {@code bin}, with an open nonconformance; out of
     * the bath at once, where they are in one. The rest of the load goes on, and its holds run on.
     *
     * @return what was taken out: a new traveller, or {@code id} itself where {@code pieces} are all of it
     */
    public Outcome<Traveller> takeOut(
            Actor actor, TravellerId id, List<Integer> pieces, String reason, BinId bin, Signer signer) {
        return transactions.noted(actor, "take out", List.of(id), transactions.commit(origin -> {
            Optional<Card> card = travellers.find(id);
            Optional<BinFact> into = bins.find(bin).map(found ->
                    new BinFact(bin, found.state().binClass(), found.state().closed()));
            if (card.isEmpty() || into.isEmpty()) {
                return new Prepared.Refused<>(List.of(card.isEmpty() ? new ShopRefusal.TravellerUnknown(id)
                        : new ShopRefusal.BinNotRegistered(bin)));
            }
            return prepare(actor, card.get(), new TravellerCommand.TakeOut(
                    origin, partings.freeLabel(id), pieces, reason, into.get(), signer));
        }, actor));
    }

    private Prepared<Traveller> prepare(Actor actor, Card card, TravellerCommand.TakeOut command) {
        Decision<TravellerEvent> decision = Transactions.asSeen(card.id(),
                Optional.ofNullable(actor.seen().get(card.id())),
                TravellerDecider.decide(Optional.of(card.traveller()), card.procedure(), command));
        return switch (decision) {
            case Decision.Refused<TravellerEvent> refused -> new Prepared.Refused<>(refused.refusals());
            case Decision.Accepted<TravellerEvent> accepted -> {
                boolean whole = accepted.events().stream()
                        .noneMatch(TravellerEvent.PiecesSetApart.class::isInstance);
                Prepared<Traveller> out = whole ? Partings.stored(card, accepted.events())
                        : partings.prepare(card, accepted.events(), command);
                yield out instanceof Prepared.Ready<Traveller> ready
                        ? out.with(moved(card, ready.result(), command), (taken, moves) -> taken) : out;
            }
        };
    }

    /** Out of the basket, where it is the whole lot, and into the other one, where what waits there may lie with it. */
    private Prepared<?> moved(Card from, Traveller taken, TravellerCommand.TakeOut command) {
        Origin origin = command.origin();
        BinId into = command.bin().id();
        List<BinCommand> moves = new ArrayList<>();
        if (taken.id().equals(from.id())) {
            from.traveller().placement().map(Placement::bin).ifPresent(old ->
                    moves.add(new BinCommand.TakeOut(old, taken.id(), origin)));
        }
        moves.add(new BinCommand.PutIn(into, taken.id(), command.bin().binClass().isClean(),
                sizes.with(bins.find(into).orElseThrow().state(), taken), origin));
        return bins.prepare(moves).with(basketfuls.mayTake(taken, from.procedure(), into), (done, free) -> done);
    }
}
