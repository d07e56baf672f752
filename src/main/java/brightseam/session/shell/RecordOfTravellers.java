package brightseam.session.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.people.Signer;
import brightseam.procedure.StepKind;
import brightseam.session.ChamberSession;
import brightseam.session.Item;
import brightseam.session.LockPass;
import brightseam.session.MeterFact;
import brightseam.session.Placed;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.Contact;
import brightseam.traveller.LockPassFact;
import brightseam.traveller.Uses;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.ChamberRecord;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** The travellers' records of the shop. */
@Component
class RecordOfTravellers implements TravellerRecord {

    private final ChamberRecord record;
    private final Travellers travellers;
    private final TravellerActions actions;
    private final Supplies supplies;
    private final GasMeters meters;

    RecordOfTravellers(ChamberRecord record, Travellers travellers, TravellerActions actions, Supplies supplies,
            GasMeters meters) {
        this.record = record;
        this.travellers = travellers;
        this.actions = actions;
        this.supplies = supplies;
        this.meters = meters;
    }

    @Override
    public Prepared<?> passIn(Actor actor, Origin origin, SessionId session, StationId station, String way,
            List<TravellerId> ids, List<SupplyId> touching, Signer signer) {
        return record.passIn(actor, origin, session, station, way, ids, contacts(touching), signer,
                objections(ids, touching, origin.at()));
    }

    @Override
    public Prepared<?> signWeld(Actor actor, Origin origin, List<TravellerId> ids, Signer signer) {
        return record.signWeld(actor, origin, ids, signer, List.of());
    }

    @Override
    public List<TravellerId> weldsToSign(Origin origin, List<TravellerId> ids) {
        return ids.stream().filter(id -> record.isWeldToSign(id, origin)).toList();
    }

    @Override
    public Prepared<?> notePassIn(Origin origin, ChamberSession session, LockPass pass) {
        List<TravellerId> in = pass.in().stream().map(session::placed).flatMap(Optional::stream).map(Placed::item)
                .filter(Item::hasTraveller).map(Item::traveller).toList();
        return in.isEmpty() ? new Prepared.Ready<>(List.of(), in) : record.notePass(origin, new LockPassFact(
                session.id(), session.lockStation().orElseThrow(), pass.number(), true,
                pass.openedAt().plus(pass.purgedFor().negated()), pass.openedAt(), purge(pass), pass.lockOxygenPpm(),
                pass.effect().map(LockPass.Effect::oxygenPpmHighest), in, isSimulated(session)));
    }

    /** On the way out the lock holds the argon of the chamber, so that nothing is purged. */
    @Override
    public Prepared<?> notePassOut(Origin origin, ChamberSession session, TravellerId traveller) {
        LockPass pass = session.passes().reversed().stream()
                .filter(one -> one.out().contains(traveller.value())).findFirst().orElseThrow();
        return record.notePass(origin, new LockPassFact(session.id(), session.lockStation().orElseThrow(),
                pass.number(), false, pass.shutAt().orElse(pass.openedAt()), origin.at(), "argon of the chamber",
                Optional.empty(), pass.effect().map(LockPass.Effect::oxygenPpmHighest), List.of(traveller),
                isSimulated(session)));
    }

    @Override
    public void noteRefusal(Actor actor, List<TravellerId> ids, String attempt, List<Refusal> refusals) {
        actions.noteRefusal(actor, ids, attempt, refusals);
    }

    private static String purge(LockPass pass) {
        return pass.cycles() > 0 ? pass.cycles() + " vacuum cycles"
                : pass.purgedFor().isZero() ? "argon since the last pass"
                : "argon for " + pass.purgedFor().toMinutes() + " min " + pass.purgedFor().toSecondsPart() + " s";
    }

    private boolean isSimulated(ChamberSession session) {
        return meters.oxygen(session.chamber()).filter(MeterFact::simulated).isPresent()
                || session.lockStation().flatMap(meters::lockOxygen).filter(MeterFact::simulated).isPresent();
    }

    private List<Contact> contacts(List<SupplyId> touching) {
        return touching.stream().distinct().map(supplies::find).flatMap(Optional::stream).map(Versioned::state)
                .map(supply -> new Contact(supply.kind(), supply.type(), supply.id().value(), supply.lot())).toList();
    }

    /** What stands against {@code touching} at the pass-in step of any of {@code ids}. */
    private List<Refusal> objections(List<TravellerId> ids, List<SupplyId> touching, Moment now) {
        return ids.stream().map(travellers::find).flatMap(Optional::stream)
                .flatMap(card -> objections(card, touching, now).stream()).distinct().toList();
    }

    private List<Refusal> objections(Card card, List<SupplyId> touching, Moment now) {
        return card.procedure().steps().stream().filter(step -> step.kind() == StepKind.PASS_IN).findFirst()
                .map(step -> supplies.look(touching, Uses.asked(card.traveller(), card.procedure(), step),
                        card.procedure().surface(step.id()), now).objections())
                .orElse(List.of());
    }
}
