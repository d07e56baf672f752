package brightseam.session.shell;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.Attempts;
import brightseam.ledger.shell.Ledger;
import brightseam.line.StationRefusal;
import brightseam.line.shell.Stations;
import brightseam.people.Signer;
import brightseam.session.ChamberSession;
import brightseam.session.ItemFact;
import brightseam.session.ListFact;
import brightseam.session.OpeningFact;
import brightseam.session.Placed.Where;
import brightseam.session.SessionCommand;
import brightseam.session.SessionRefusal;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.ShopRefusal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.springframework.stereotype.Service;

/**
 * Everything a person does to a session and its chamber. Each call decides on the newest state, stores all or nothing,
 * the travellers' part too, and answers only when what it stored would survive a power cut. What is done at the lock
 * is in {@link LockActions}.
 *
 * <p>Every method throws {@link brightseam.ledger.NotStoredException} where the disk failed; nothing counts then.
 */
@Service
public class SessionActions {

    private final Sessions sessions;
    private final SessionLists lists;
    private final ItemFacts items;
    private final ChamberGear gear;
    private final GasMeters meters;
    private final TravellerRecord record;
    private final Opening opening;
    private final Stations stations;
    private final Attempts attempts;
    private final ShopClock clock;

    SessionActions(Sessions sessions, SessionLists lists, ItemFacts items, ChamberGear gear, GasMeters meters,
            TravellerRecord record, Opening opening, Stations stations, Ledger ledger, ShopClock clock) {
        this.sessions = sessions;
        this.lists = lists;
        this.items = items;
        this.gear = gear;
        this.meters = meters;
        this.record = record;
        this.opening = opening;
        this.stations = stations;
        this.attempts = new Attempts(ledger);
        this.clock = clock;
    }

    /** Begins a session of {@code kit} in {@code chamber}, under the next free name. */
    public Outcome<ChamberSession> open(Actor actor, KitId kit, StationId chamber, Signer signer) {
        return attempts.commit(() -> {
            Origin origin = origin(actor);
            SessionId id = sessions.next();
            return sessions.prepare(id, List.of(new SessionCommand.OpenSession(id, kit, chamber,
                    gear.lockOf(chamber), lists.of(kit, chamber, origin.at()),
                    sessions.openAt(chamber).map(ChamberSession::id),
                    sessions.openOfKit(kit).map(ChamberSession::id), against(kit, chamber), origin, signer)));
        });
    }

    /**
     * Lays what {@code label} stands for into the open chamber: a traveller by its own label or by the bin that it lies
     * in, or a supply. Of several in one bin all or none.
     */
    public Outcome<ChamberSession> checkIn(Actor actor, SessionId session, String label) {
        return scan(actor, session, label, "check in", (at, fact) ->
                new SessionCommand.CheckIn(session, fact, at.list(), at.origin()));
    }

    /** Takes what {@code label} stands for out of the open chamber again. */
    public Outcome<ChamberSession> takeBack(Actor actor, SessionId session, String label) {
        return on(session, actor, (state, origin) -> new SessionCommand.TakeBack(session, label, origin));
    }

    /** Lets the line {@code key} of the list be closed without what it names. */
    public Outcome<ChamberSession> leaveOut(
            Actor actor, SessionId session, String key, String reason, Signer signer) {
        return on(session, actor, (state, origin) -> new SessionCommand.LeaveOut(
                session, key, reason, lists.of(state, origin.at()), origin, signer));
    }

    /**
     * Shuts the chamber, and signs the pass-in of the travellers inside.
     *
     * @param touching labels of what touches the pieces on their way in, the new gloves among them
     */
    public Outcome<ChamberSession> closeChamber(
            Actor actor, SessionId session, boolean cautionsRead, List<SupplyId> touching, Signer signer) {
        List<TravellerId> inside = travellers(session, Where.CHECKED_IN);
        return noted(actor, inside, "close chamber", attempts.commit(() -> with(session, state -> {
            Origin origin = origin(actor);
            Prepared<ChamberSession> closed = sessions.prepare(session, List.of(new SessionCommand.CloseChamber(
                    session, lists.of(state, origin.at()), meters.oxygen(state.chamber()), cautionsRead, origin,
                    signer)));
            return joined(closed, record.passIn(actor, origin, session, state.chamber(), "open chamber",
                    state.travellersIn(Where.CHECKED_IN), touching, signer));
        })));
    }

    /** Turns the argon on. */
    public Outcome<ChamberSession> startPurge(Actor actor, SessionId session) {
        return on(session, actor, (state, origin) -> opening.purge(state, origin));
    }

    /** Turns the argon off without opening the chamber. */
    public Outcome<ChamberSession> stopPurge(Actor actor, SessionId session, String reason) {
        return on(session, actor, (state, origin) -> new SessionCommand.StopPurge(
                session, reason, opening.joints(state, origin.at()), origin));
    }

    /** Opens the chamber, signs the weld step of the travellers, and ends the session. */
    public Outcome<ChamberSession> openChamber(
            Actor actor, SessionId session, boolean cautionsRead, Signer signer) {
        return attempts.commit(() -> with(session, state -> {
            Origin origin = origin(actor);
            Moment now = origin.at();
            OpeningFact fact = opening.fact(state, cautionsRead, now);
            Prepared<ChamberSession> ended = sessions.prepare(session, List.of(new SessionCommand.OpenChamber(session,
                    fact, gear.used(state, now), state.gas().purge().map(purge -> purge.argon()
                            .neededStandardLitres()), origin, signer)));
            return joined(ended, record.signWeld(actor, origin, weldsToSign(state, origin), signer))
                    .with(gear.noteUse(state, origin), (over, counted) -> over);
        }));
    }

    /** Gives the session up; a shut chamber is opened by it, under the same rules. */
    public Outcome<ChamberSession> abandon(
            Actor actor, SessionId session, String reason, boolean cautionsRead, Signer signer) {
        return attempts.commit(() -> with(session, state -> {
            Origin origin = origin(actor);
            return sessions.prepare(session, List.of(new SessionCommand.Abandon(session, reason,
                            opening.fact(state, cautionsRead, origin.at()), gear.used(state, origin.at()), origin,
                            signer)))
                    .with(gear.noteUse(state, origin), (over, counted) -> over);
        }));
    }

    /**
     * Signs, after the session, the weld steps that could not be signed at its end: their nonconformances are decided
     * by now. Refused where there is none.
     */
    public Outcome<ChamberSession> signWelds(Actor actor, SessionId session, Signer signer) {
        return attempts.commit(() -> with(session, state -> {
            Origin origin = origin(actor);
            List<TravellerId> due = weldsToSign(state, origin);
            return !state.phase().isOver() || due.isEmpty()
                    ? new Prepared.Refused<>(List.of(new SessionRefusal.NoWeldToSign(session)))
                    : joined(new Prepared.Ready<>(List.of(), state), record.signWeld(actor, origin, due, signer));
        }));
    }

    private List<TravellerId> weldsToSign(ChamberSession session, Origin origin) {
        return record.weldsToSign(origin, session.travellersPassedIn());
    }

    /** What is known when something is scanned. */
    record At(ListFact list, Origin origin) {}

    /** Looks {@code label} up, and carries out a command on each thing that it stands for, all or none. */
    Outcome<ChamberSession> scan(Actor actor, SessionId session, String label, String attempt,
            BiFunction<At, ItemFact, SessionCommand> command) {
        List<TravellerId> scanned = new ArrayList<>();
        Outcome<ChamberSession> outcome = attempts.commit(() -> with(session, state -> {
            Origin origin = origin(actor);
            ListFact list = lists.of(state, origin.at());
            ItemFacts.Scanned found = items.look(state, label, list.purgeAndWork(), origin.at());
            scanned.clear();
            found.items().stream().map(ItemFact::item).filter(item -> item.hasTraveller())
                    .forEach(item -> scanned.add(item.traveller()));
            return together(session, found, found.items().stream()
                    .map(fact -> command.apply(new At(list, origin), fact)).toList());
        }));
        return noted(actor, scanned, attempt, outcome);
    }

    /** Decides one command on the newest state. */
    Outcome<ChamberSession> on(
            SessionId session, Actor actor, BiFunction<ChamberSession, Origin, SessionCommand> command) {
        return attempts.commit(() -> with(session, state ->
                sessions.prepare(session, List.of(command.apply(state, origin(actor))))));
    }

    /** Prepares on the newest state of {@code session}, or refuses for want of one. */
    Prepared<ChamberSession> with(
            SessionId session, Function<ChamberSession, Prepared<ChamberSession>> preparing) {
        return sessions.find(session).map(Versioned::state).map(preparing)
                .orElseGet(() -> new Prepared.Refused<>(List.of(new SessionRefusal.SessionUnknown(session))));
    }

    Outcome<ChamberSession> commit(Supplier<Prepared<ChamberSession>> preparing) {
        return attempts.commit(preparing);
    }

    Origin origin(Actor actor) {
        return new Origin(clock.now(), actor.badge(), actor.tablet(), clock.isDemo(), actor.label());
    }

    Outcome<ChamberSession> noted(
            Actor actor, List<TravellerId> travellers, String attempt, Outcome<ChamberSession> outcome) {
        if (outcome instanceof Outcome.Refused<ChamberSession> refused && !travellers.isEmpty()) {
            record.noteRefusal(actor, travellers, attempt, refused.refusals());
        }
        return outcome;
    }

    List<TravellerId> travellers(SessionId session, Where where) {
        return sessions.find(session).map(found -> found.state().travellersIn(where)).orElse(List.of());
    }

    static Prepared<ChamberSession> joined(Prepared<ChamberSession> session, Prepared<?> travellers) {
        Prepared<ChamberSession> both = session.with(travellers, (state, ignored) -> state);
        return both instanceof Prepared.Refused<ChamberSession> refused
                ? new Prepared.Refused<>(refused.refusals().stream().distinct().toList()) : both;
    }

    private Prepared<ChamberSession> together(
            SessionId session, ItemFacts.Scanned found, List<SessionCommand> commands) {
        List<Refusal> broken = new ArrayList<>(found.refusals());
        commands.forEach(command -> broken.addAll(sessions.prepare(session, List.of(command)).broken()));
        return broken.isEmpty() ? sessions.prepare(session, commands)
                : new Prepared.Refused<>(broken.stream().distinct().toList());
    }

    private List<Refusal> against(KitId kit, StationId chamber) {
        List<Refusal> against = new ArrayList<>();
        if (lists.kit(kit).filter(found -> !found.closed()).isEmpty()) {
            against.add(new SessionRefusal.SessionKitNotOpen(kit));
        }
        if (gear.limits(chamber).isEmpty()) {
            against.add(new ShopRefusal.StationUnknown(chamber));
        }
        stations.find(chamber).flatMap(found -> found.state().outOfUseReason()).ifPresent(reason ->
                against.add(new StationRefusal.StationOutOfUse(chamber, reason)));
        return against;
    }
}
