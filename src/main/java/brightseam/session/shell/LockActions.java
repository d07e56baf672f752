package brightseam.session.shell;

import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.people.Signer;
import brightseam.session.ChamberSession;
import brightseam.session.Item;
import brightseam.session.Lock;
import brightseam.session.LockNeed;
import brightseam.session.Placed;
import brightseam.session.Placed.Where;
import brightseam.session.SessionCommand;
import brightseam.session.SessionRefusal;
import brightseam.traveller.shell.Actor;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.springframework.stereotype.Service;

/**
 * Everything a person does at the transfer lock of a session; see {@link SessionActions} for what holds of each call.
 */
@Service
public class LockActions {

    private final SessionActions actions;
    private final Sessions sessions;
    private final ChamberGear gear;
    private final GasMeters meters;
    private final TravellerRecord record;
    private final Opening opening;

    LockActions(SessionActions actions, Sessions sessions, ChamberGear gear, GasMeters meters,
            TravellerRecord record, Opening opening) {
        this.actions = actions;
        this.sessions = sessions;
        this.gear = gear;
        this.meters = meters;
        this.record = record;
        this.opening = opening;
    }

    /** Opens the outer door. */
    public Outcome<ChamberSession> openOuter(Actor actor, SessionId session) {
        return actions.on(session, actor, (state, origin) -> new SessionCommand.OpenOuter(session, origin));
    }

    /** Lays what {@code label} stands for into the lock, through the open outer door. */
    public Outcome<ChamberSession> putIn(Actor actor, SessionId session, String label) {
        return actions.scan(actor, session, label, "put in lock", (at, fact) ->
                new SessionCommand.PutInLock(session, fact, at.list(), at.origin()));
    }

    /** Lays what {@code label} stands for from the chamber into the lock, through the open inner door. */
    public Outcome<ChamberSession> putOut(Actor actor, SessionId session, String label) {
        return actions.on(session, actor, (state, origin) -> new SessionCommand.PutOut(
                session, label, hot(state, label, origin), origin));
    }

    /** Takes what {@code label} stands for out of the lock, through whichever door is open. */
    public Outcome<ChamberSession> takeOut(Actor actor, SessionId session, String label) {
        return actions.commit(() -> actions.with(session, state -> {
            Origin origin = actions.origin(actor);
            Prepared<ChamberSession> taken = sessions.prepare(
                    session, List.of(new SessionCommand.TakeFromLock(session, label, origin)));
            Optional<TravellerId> leaving = state.placed(label)
                    .filter(one -> one.where() == Where.LOCK_OUTBOUND
                            && state.lock().doors() == Lock.Doors.OUTER_OPEN)
                    .map(Placed::item).filter(Item::hasTraveller).map(Item::traveller);
            return leaving.isEmpty() ? taken
                    : SessionActions.joined(taken, record.notePassOut(origin, state, leaving.get()));
        }));
    }

    /** Shuts the outer door, which begins the lock's purge. */
    public Outcome<ChamberSession> shutOuter(Actor actor, SessionId session) {
        return purging(actor, session, (need, origin) -> new SessionCommand.ShutOuter(session, need, origin));
    }

    /** Begins the purge of the shut lock anew. */
    public Outcome<ChamberSession> purge(Actor actor, SessionId session) {
        return purging(actor, session, (need, origin) -> new SessionCommand.PurgeLock(session, need, origin));
    }

    /** Counts one more cycle of pumping the lock down and filling it. */
    public Outcome<ChamberSession> noteCycle(Actor actor, SessionId session) {
        return actions.on(session, actor, (state, origin) -> new SessionCommand.NoteCycle(session, origin));
    }

    /**
     * Opens the inner door, and signs the pass-in of the travellers in the lock.
     *
     * @param touching labels of what touches the pieces on their way in, the new gloves among them
     */
    public Outcome<ChamberSession> openInner(
            Actor actor, SessionId session, boolean cautionsRead, List<SupplyId> touching, Signer signer) {
        List<TravellerId> waiting = actions.travellers(session, Where.LOCK_INBOUND);
        return actions.noted(actor, waiting, "open inner door", actions.commit(() -> actions.with(session, state -> {
            Origin origin = actions.origin(actor);
            Prepared<ChamberSession> opened = sessions.prepare(session, List.of(new SessionCommand.OpenInner(session,
                    state.lockStation().flatMap(meters::lockOxygen), meters.oxygen(state.chamber()), cautionsRead,
                    origin, signer)));
            List<TravellerId> inbound = state.travellersIn(Where.LOCK_INBOUND);
            return inbound.isEmpty() || state.lockStation().isEmpty() ? opened
                    : SessionActions.joined(opened, record.passIn(actor, origin, session,
                            state.lockStation().get(), "lock pass " + state.nextPass(), inbound, touching, signer));
        })));
    }

    /** Shuts the inner door. */
    public Outcome<ChamberSession> shutInner(Actor actor, SessionId session) {
        return actions.on(session, actor, (state, origin) -> new SessionCommand.ShutInner(session, origin));
    }

    private List<Refusal> hot(ChamberSession state, String label, Origin origin) {
        return state.placed(label).map(Placed::item).filter(Item::hasTraveller)
                .map(item -> opening.joints(state, List.of(item.traveller()), origin.at())).orElse(List.of());
    }

    private Outcome<ChamberSession> purging(
            Actor actor, SessionId session, BiFunction<LockNeed, Origin, SessionCommand> command) {
        return actions.commit(() -> actions.with(session, state -> {
            Origin origin = actions.origin(actor);
            Optional<LockNeed> need = gear.lockNeed(state.chamber(), origin.at());
            return need.isEmpty()
                    ? new Prepared.Refused<>(List.of(state.lockStation().isEmpty()
                            ? new SessionRefusal.NoLock(state.chamber())
                            : new SessionRefusal.LockNeverClean(state.chamber())))
                    : sessions.prepare(session, List.of(command.apply(need.get(), origin)));
        }));
    }
}
