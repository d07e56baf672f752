package brightseam.traveller.shell;

import brightseam.bins.Bin;
import brightseam.bins.BinCommand;
import brightseam.bins.shell.Bins;
import brightseam.kernel.BinId;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Append;
import brightseam.ledger.Prepared;
import brightseam.people.Signer;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.ArcFact;
import brightseam.traveller.Contact;
import brightseam.traveller.JointFact;
import brightseam.traveller.JudgedFact;
import brightseam.traveller.LockPassFact;
import brightseam.traveller.Placement;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerCommand;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;

/**
 * What a chamber session and the weld map write into the travellers' records.
 *
 * <p>Nothing is stored here: each call answers what would be stored, one append for each traveller, for the caller to
 * join with its own part through {@link Prepared#with}. A call decides on the newest state, so it is made inside the
 * caller's own attempt. Cautions and gloves have been shown and confirmed on the session's screen before.
 */
@Service
public class ChamberRecord {

    private final Travellers travellers;
    private final Transactions transactions;
    private final Entitlement entitlement;
    private final Bins bins;
    private final ObjectProvider<ChamberWork> work;

    ChamberRecord(Travellers travellers, Transactions transactions, Entitlement entitlement, Bins bins,
            ObjectProvider<ChamberWork> work) {
        this.travellers = travellers;
        this.transactions = transactions;
        this.entitlement = entitlement;
        this.bins = bins;
        this.work = work;
    }

    /**
     * Passes {@code ids} into the chamber: begins and signs the pass-in step of each, and takes them out of their bins.
     *
     * @param station the lock, or the chamber that stands open
     * @param way how they go in: {@code open chamber} or {@code lock pass 3}
     * @param touching what was scanned because it touches the pieces on the way, the new gloves among it
     * @param objections what else stands against it
     * @return the travellers afterwards; refused by every rule of the bench's pass-in, for a procedure that passes in
     *     at the bench, and where a bin holds others that stay outside
     */
    public Prepared<List<Card>> passIn(Actor actor, Origin origin, SessionId session, StationId station,
            String way, List<TravellerId> ids, List<Contact> touching, Signer signer, List<Refusal> objections) {
        Prepared<List<Card>> signed = each(ids, asked -> new TravellerCommand.EnterChamber(origin, session,
                station, way, touching, signer, others(ids, asked.id()), both(objections,
                        entitlement.objections(actor.badge(), step(asked, StepKind.PASS_IN), origin))));
        return signed.with(outOfTheirBins(origin, ids), (passed, emptied) -> passed);
    }

    /** Lets an arc begin on the pieces of every traveller of the joint; the first one begins their weld step. */
    public Prepared<List<Card>> noteArc(Origin origin, ArcFact arc) {
        return each(arc.travellers(), asked -> new TravellerCommand.BeginArc(origin, arc));
    }

    /**
     * Writes down what the meters proved of a joint's run; an excursion or a stretch without proof opens a
     * nonconformance in the same append. Refused for an unknown traveller alone.
     */
    public Prepared<List<Card>> noteJoint(Origin origin, JointFact joint) {
        return each(joint.travellers(), asked -> new TravellerCommand.NoteJoint(origin, joint));
    }

    /** Writes down an inspector's verdict on a joint; a rejection opens a nonconformance in the same append. */
    public Prepared<List<Card>> noteJudged(Origin origin, JudgedFact verdict, Signer signer) {
        return each(verdict.travellers(), asked -> new TravellerCommand.JudgeJoint(origin, verdict, signer));
    }

    /** Writes down that travellers went through the lock. Refused for an unknown traveller alone. */
    public Prepared<List<Card>> notePass(Origin origin, LockPassFact pass) {
        return each(pass.travellers(), asked -> new TravellerCommand.NoteLockPass(origin, pass));
    }

    /**
     * Signs the weld step of {@code ids}, which ends their clean windows.
     *
     * @param objections what else stands against it, besides the signer's entitlement and what the weld map says
     */
    public Prepared<List<Card>> signWeld(
            Actor actor, Origin origin, List<TravellerId> ids, Signer signer, List<Refusal> objections) {
        return each(ids, asked -> new TravellerCommand.SignWelding(origin, signer, others(ids, asked.id()),
                Stream.of(objections, entitlement.objections(actor.badge(), step(asked, StepKind.WELD), origin),
                        step(asked, StepKind.WELD).map(step -> unfinished(asked.id(), step, origin)).orElse(List.of()))
                        .<Refusal>flatMap(List::stream).toList()));
    }

    /**
     * Whether nothing but a signature is missing at the weld step of {@code id}: an arc began it, every joint that the
     * weld map has for it is proven, no nonconformance is open.
     */
    public boolean isWeldToSign(TravellerId id, Origin origin) {
        return travellers.find(id).filter(card -> !card.traveller().isInQuarantine()).stream()
                .flatMap(card -> card.procedure().steps().stream().filter(step -> step.kind() == StepKind.WELD
                        && step.inSession() && card.traveller().run(step.id()).isPresent()
                        && !card.traveller().isSigned(step.id())))
                .anyMatch(step -> unfinished(id, step, origin).isEmpty());
    }

    /** What the weld map has against passing {@code step}; nothing where nobody keeps one. */
    List<Refusal> unfinished(TravellerId id, Step step, Origin origin) {
        return work.stream().flatMap(one -> one.objections(id, step, origin.at()).stream()).toList();
    }

    private Prepared<List<Card>> each(
            Collection<TravellerId> ids, Function<Transactions.Asked, TravellerCommand> command) {
        return Prepared.all(ids.stream().distinct().map(id -> card(transactions.prepare(id, command))).toList());
    }

    private Prepared<Card> card(Prepared<Traveller> prepared) {
        return switch (prepared) {
            case Prepared.Refused<Traveller> refused -> new Prepared.Refused<>(refused.refusals());
            case Prepared.Ready<Traveller> ready -> {
                Append append = ready.appends().getFirst();
                yield new Prepared.Ready<>(ready.appends(), new Card(ready.result(),
                        travellers.procedure(ready.result()), append.expectedVersion() + append.events().size()));
            }
        };
    }

    private static Optional<Step> step(Transactions.Asked asked, StepKind kind) {
        return asked.procedure().steps().stream().filter(step -> step.kind() == kind).findFirst();
    }

    private Prepared<?> outOfTheirBins(Origin origin, List<TravellerId> ids) {
        Set<TravellerId> going = new TreeSet<>(ids);
        Set<BinId> from = going.stream().map(travellers::find).flatMap(Optional::stream)
                .flatMap(card -> card.traveller().placement().stream()).map(Placement::bin)
                .collect(Collectors.toCollection(TreeSet::new));
        List<Refusal> shared = new ArrayList<>();
        List<BinCommand> commands = new ArrayList<>();
        for (BinId id : from) {
            Bin bin = bins.find(id).orElseThrow().state();
            List<TravellerId> staying = bin.inside().stream().filter(one -> !going.contains(one)).sorted().toList();
            if (bin.closed() && !staying.isEmpty()) {
                shared.add(new ShopRefusal.OthersInBin(id, staying));
            }
            if (bin.closed()) {
                commands.add(new BinCommand.OpenBin(id, true, origin));
            }
            bin.inside().stream().filter(going::contains)
                    .forEach(one -> commands.add(new BinCommand.TakeOut(id, one, origin)));
        }
        return shared.isEmpty() ? bins.prepare(commands) : new Prepared.Refused<>(shared);
    }

    private static List<TravellerId> others(List<TravellerId> ids, TravellerId own) {
        return ids.stream().filter(id -> !id.equals(own)).sorted().toList();
    }

    private static List<Refusal> both(List<? extends Refusal> some, List<? extends Refusal> others) {
        return Stream.<Refusal>concat(some.stream(), others.stream()).toList();
    }
}
