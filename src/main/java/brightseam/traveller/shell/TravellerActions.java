package brightseam.traveller.shell;

import brightseam.bins.BinCommand;
import brightseam.bins.LotSize;
import brightseam.bins.shell.Bins;
import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.people.Signer;
import brightseam.procedure.Step;
import brightseam.supply.SupplyRefusal;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerCommand;
import brightseam.traveller.TravellerCommand.BinFact;
import brightseam.traveller.Window;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;

/**
 * Everything a person does to a traveller on the way to the lock. Each call decides on the newest state, stores all or
 * nothing, and answers only when what it stored would survive a power cut; a refusal is written into the record.
 *
 * <p>Calls that take several travellers are for a load: they are decided and signed together.
 *
 * <p>Every method throws {@link brightseam.ledger.NotStoredException} where the disk failed; nothing counts then.
 */
@Service
public class TravellerActions {

    private final Transactions transactions;
    private final Travellers travellers;
    private final Bins bins;
    private final Entitlement entitlement;
    private final Immersion immersion;
    private final LotSizes sizes;
    private final Touching touching;
    private final Basketfuls basketfuls;

    TravellerActions(Transactions transactions, Travellers travellers, Bins bins, Entitlement entitlement,
            Immersion immersion, LotSizes sizes, Touching touching, Basketfuls basketfuls) {
        this.transactions = transactions;
        this.travellers = travellers;
        this.bins = bins;
        this.entitlement = entitlement;
        this.immersion = immersion;
        this.sizes = sizes;
        this.touching = touching;
        this.basketfuls = basketfuls;
    }

    /** Puts the pieces of {@code ids} into {@code bin}, out of where they were. */
    public Outcome<List<Traveller>> putInBin(Actor actor, Collection<TravellerId> ids, BinId bin) {
        if (bins.find(bin).isEmpty()) {
            return refused(actor, "put in bin", ids, new ShopRefusal.BinNotRegistered(bin));
        }
        return transactions.run(actor, "put in bin", ids,
                (origin, card) -> new TravellerCommand.PutInBin(origin, fact(bin)),
                origin -> basketfuls.mayJoin(ids, bin).with(
                        bins.prepare(moves(origin, ids, bin)), (free, moved) -> moved));
    }

    /** Closes {@code bin}, or seals the bag, for everything in it. */
    public Outcome<List<Traveller>> closeBin(Actor actor, BinId bin) {
        return transactions.run(actor, "close bin", bins.inside(bin),
                (origin, card) -> new TravellerCommand.CloseBin(origin),
                origin -> bins.prepare(new BinCommand.CloseBin(bin, origin)));
    }

    /** Opens {@code bin} or the bag, for everything in it. */
    public Outcome<List<Traveller>> openBin(Actor actor, BinId bin) {
        Collection<TravellerId> inside = bins.inside(bin);
        boolean cleanPlace = inside.stream().map(travellers::find).flatMap(Optional::stream)
                .allMatch(card -> card.traveller().window() instanceof Window.Open);
        return transactions.run(actor, "open bin", inside,
                (origin, card) -> new TravellerCommand.OpenBin(origin),
                origin -> bins.prepare(new BinCommand.OpenBin(bin, cleanPlace, origin)));
    }

    /**
     * Begins {@code step} of a load at {@code station}; an inspection point needs no station.
     *
     * @param scanned what touches the pieces there, by its labels
     */
    public Outcome<List<Traveller>> startStep(Actor actor, Collection<TravellerId> ids, StepId step,
            Optional<StationId> station, boolean cautionsRead, boolean glovesOn, List<SupplyId> scanned) {
        if (station.isPresent() && entitlement.station(station.get()).isEmpty()) {
            return refused(actor, "start step", ids, new ShopRefusal.StationUnknown(station.get()));
        }
        return transactions.runInTurn(actor, "start step", ids, (origin, card) -> {
            TravellerCommand start = start(
                    ids, card, step, station, cautionsRead, glovesOn, scanned, actor.badge(), origin);
            return Stream.concat(Stream.of(start), immersion.report(
                    origin, card.traveller(), card.procedure(), step, station).stream()).toList();
        }, origin -> basketfuls.mayGo(ids, step).with(
                immersion.takeIn(origin, ids, step, station), (free, taken) -> taken));
    }

    /**
     * Enters {@code step}, which was done at {@code doneAt} when nobody could write it down; readings and signature
     * follow as for every step.
     *
     * @param scanned what touched the pieces there, by its labels
     * @param cautionsRead whether cautions were read, as the signer states; gloves likewise
     */
    public Outcome<List<Traveller>> enterLate(Actor actor, Collection<TravellerId> ids, StepId step, StationId station,
            boolean cautionsRead, boolean glovesOn, List<SupplyId> scanned, Instant doneAt, String reason,
            Signer signer) {
        if (entitlement.station(station).isEmpty()) {
            return refused(actor, "enter late", ids, new ShopRefusal.StationUnknown(station));
        }
        return transactions.run(actor, "enter late", ids, (origin, card) -> new TravellerCommand.EnterLate(
                start(ids, card, step, Optional.of(station), cautionsRead, glovesOn, scanned, signer.badge(), origin),
                doneAt, reason, signer), origin -> basketfuls.mayGo(ids, step).with(
                immersion.takeIn(origin, ids, step, Optional.of(station)), (free, taken) -> taken));
    }

    private TravellerCommand.StartStep start(Collection<TravellerId> ids, Transactions.Asked card, StepId step,
            Optional<StationId> station, boolean cautionsRead, boolean glovesOn, List<SupplyId> scanned,
            BadgeId who, Origin origin) {
        return new TravellerCommand.StartStep(
                origin, step, station.flatMap(entitlement::station), cautionsRead, glovesOn, others(ids, card),
                both(immersion.touching(station, step(card, step)), touching.contacts(scanned)),
                both(entitlement.objections(who, step(card, step), origin),
                        touching.objections(scanned, card, step, origin)));
    }

    /** Begins the hold of {@code step}, where readings came first. */
    public Outcome<List<Traveller>> beginHold(Actor actor, Collection<TravellerId> ids, StepId step) {
        return transactions.run(actor, "begin hold", ids,
                (origin, card) -> new TravellerCommand.BeginHold(origin, step),
                origin -> basketfuls.mayGo(ids, step).with(
                        immersion.holdMayBegin(origin, ids, step), (free, may) -> may));
    }

    /** Ends the hold of {@code step}. */
    public Outcome<List<Traveller>> endHold(Actor actor, Collection<TravellerId> ids, StepId step) {
        return transactions.run(actor, "end hold", ids,
                (origin, card) -> new TravellerCommand.EndHold(origin, step));
    }

    /**
     * Takes the pieces out before the hold of {@code step} is over, because something worse would happen: quarantine.
     */
    public Outcome<List<Traveller>> cutHoldShort(
            Actor actor, Collection<TravellerId> ids, StepId step, String reason) {
        return transactions.run(actor, "cut hold short", ids,
                (origin, card) -> new TravellerCommand.CutHoldShort(origin, step, reason));
    }

    /** Writes down one value for the whole load. */
    public Outcome<List<Traveller>> takeReading(
            Actor actor, Collection<TravellerId> ids, StepId step, String reading, BigDecimal value) {
        return transactions.run(actor, "take reading", ids,
                (origin, card) -> new TravellerCommand.TakeReading(origin, step, reading, value));
    }

    /** Corrects a value; the old one stays visible. */
    public Outcome<List<Traveller>> correctReading(Actor actor, TravellerId id, StepId step, String reading,
            BigDecimal value, String reason, Signer signer) {
        return transactions.run(actor, "correct reading", List.of(id), (origin, card) ->
                new TravellerCommand.CorrectReading(origin, step, reading, value, reason, signer));
    }

    /** Signs {@code step} once for the whole load. */
    public Outcome<List<Traveller>> signStep(Actor actor, Collection<TravellerId> ids, StepId step, Signer signer) {
        return transactions.run(actor, "sign step", ids, (origin, card) -> new TravellerCommand.SignStep(
                origin, step, signer, others(ids, card),
                entitlement.objections(signer.badge(), step(card, step), origin)));
    }

    /** Says that something other than clean gloves touched the pieces. */
    public Outcome<List<Traveller>> reportTouch(Actor actor, Collection<TravellerId> ids, String what) {
        return transactions.run(actor, "report touch", ids,
                (origin, card) -> new TravellerCommand.ReportTouch(origin, what));
    }

    /** Says that the gloves touched something else, and not the pieces since: new ones are asked for. */
    public Outcome<List<Traveller>> reportGlovesSpent(Actor actor, Collection<TravellerId> ids, String what) {
        return transactions.run(actor, "report gloves spent", ids,
                (origin, card) -> new TravellerCommand.ReportGlovesSpent(origin, what));
    }

    /** Puts on new {@code gloves} in the middle of a step. */
    public Outcome<List<Traveller>> changeGloves(Actor actor, Collection<TravellerId> ids, SupplyId gloves) {
        if (touching.contacts(List.of(gloves)).isEmpty()) {
            return refused(actor, "change gloves", ids, new SupplyRefusal.SupplyUnknown(gloves));
        }
        return transactions.run(actor, "change gloves", ids, (origin, card) -> new TravellerCommand.ChangeGloves(
                origin, touching.contacts(List.of(gloves)).getFirst(), touching.objectionsTo(gloves, card, origin)));
    }

    /** Says that something is wrong with {@code pieces}: quarantine. */
    public Outcome<List<Traveller>> reportNonconformance(
            Actor actor, TravellerId id, List<Integer> pieces, String text) {
        return transactions.run(actor, "report nonconformance", List.of(id),
                (origin, card) -> new TravellerCommand.ReportNonconformance(origin, pieces, text));
    }

    /** Puts the pieces under suspicion: something that touched them at {@code step} proved bad, or may have been. */
    public Outcome<List<Traveller>> markSuspect(
            Actor actor, Map<TravellerId, Optional<StepId>> touched, String reason, Signer signer) {
        return transactions.run(actor, "mark suspect", touched.keySet(), (origin, card) ->
                new TravellerCommand.MarkSuspect(origin, touched.get(card.id()), reason, signer));
    }

    /** Writes down that something was refused before it became a command, such as the scan of a wrong label. */
    public void noteRefusal(Actor actor, Collection<TravellerId> ids, String attempt, List<Refusal> refusals) {
        transactions.note(actor, attempt, ids, refusals);
    }

    private BinFact fact(BinId bin) {
        return bins.find(bin).map(found -> new BinFact(bin, found.state().binClass(), found.state().closed()))
                .orElseThrow();
    }

    /** What has ended was taken out of its bin; where it comes back, its record still names that bin. */
    private List<BinCommand> moves(Origin origin, Collection<TravellerId> ids, BinId to) {
        boolean clean = fact(to).binClass().isClean();
        Map<TravellerId, LotSize> known = sizes.in(bins.find(to).orElseThrow().state(), ids);
        List<BinCommand> moves = new ArrayList<>();
        for (TravellerId id : ids) {
            travellers.find(id).flatMap(card -> card.traveller().placement())
                    .filter(where -> !where.bin().equals(to) && bins.inside(where.bin()).contains(id))
                    .ifPresent(where -> moves.add(new BinCommand.TakeOut(where.bin(), id, origin)));
            moves.add(new BinCommand.PutIn(to, id, clean, known, origin));
        }
        return moves;
    }

    private static List<TravellerId> others(Collection<TravellerId> ids, Transactions.Asked card) {
        return ids.stream().filter(id -> !id.equals(card.id())).sorted().toList();
    }

    private static Optional<Step> step(Transactions.Asked card, StepId step) {
        return card.procedure().find(step);
    }

    private static <T> List<T> both(List<? extends T> some, List<? extends T> others) {
        return Stream.<T>concat(some.stream(), others.stream()).toList();
    }

    private Outcome<List<Traveller>> refused(
            Actor actor, String attempt, Collection<TravellerId> ids, Refusal refusal) {
        return transactions.noted(actor, attempt, ids, new Outcome.Refused<>(List.of(refusal)));
    }
}
