package brightseam.session.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.shell.ShopClock;
import brightseam.kit.Kit;
import brightseam.ledger.Versioned;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.session.ChamberSession;
import brightseam.session.GasLimits;
import brightseam.session.ListFact;
import brightseam.session.Lock;
import brightseam.session.LockNeed;
import brightseam.session.MeterFact;
import brightseam.session.Phase;
import brightseam.session.Placed.Where;
import brightseam.session.Purge;
import brightseam.session.SessionCommand;
import brightseam.session.SessionDecider;
import brightseam.session.SessionEvent;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** Makes the views of sessions. What may be done is asked of the rules that decide it, never worked out again. */
@Service
public class SessionViews {

    /** Stands for whoever will sign: who that may be is asked when it is signed. */
    private static final Signer SOMEBODY = new Signer(
            new BadgeId("SOMEBODY"), "somebody", List.of(Role.values()), Optional.empty(), "none");

    private final Sessions sessions;
    private final SessionLists lists;
    private final SessionGas gas;
    private final ChamberGear gear;
    private final GasMeters meters;
    private final Opening opening;
    private final TravellerRecord record;
    private final ShopClock clock;

    SessionViews(Sessions sessions, SessionLists lists, SessionGas gas, ChamberGear gear, GasMeters meters,
            Opening opening, TravellerRecord record, ShopClock clock) {
        this.sessions = sessions;
        this.lists = lists;
        this.gas = gas;
        this.gear = gear;
        this.meters = meters;
        this.opening = opening;
        this.record = record;
        this.clock = clock;
    }

    /** The view of {@code session} now; empty where there is none. */
    public Optional<SessionView> of(SessionId session) {
        return sessions.find(session).map(found -> view(found, clock.now()));
    }

    /** The views of every session that is not over, oldest first. */
    public List<SessionView> open() {
        return sessions.open().stream().map(ChamberSession::id).map(this::of).flatMap(Optional::stream).toList();
    }

    private SessionView view(Versioned<ChamberSession> found, Moment now) {
        ChamberSession session = found.state();
        Origin origin = new Origin(now, Origin.SHOP, "server", clock.isDemo());
        ListFact list = lists.of(session, now);
        boolean checkingIn = session.phase() == Phase.CHECK_IN;
        boolean shut = session.phase().isShut();
        return new SessionView(session, found.version(), lists.kit(session.kit()).map(Kit::title).orElse(""), now,
                session.phase().isOver() ? session.list() : session.list(list.needs()),
                checkingIn ? against(session, new SessionCommand.CloseChamber(session.id(), list,
                        meters.oxygen(session.chamber()), true, origin, SOMEBODY)) : List.of(),
                shut && !session.phase().isPurged() ? againstPurge(session, origin) : List.of(),
                shut ? against(session, new SessionCommand.OpenChamber(session.id(), opening.fact(session, true, now),
                        List.of(), Optional.empty(), origin, SOMEBODY)) : List.of(),
                session.phase().isOver() ? record.weldsToSign(origin, session.travellersPassedIn()) : List.of(),
                gas(session, now), gear.outlook(session.chamber(), now), lock(session, origin));
    }

    private List<Refusal> againstPurge(ChamberSession session, Origin origin) {
        return gear.limits(session.chamber()).isEmpty() ? List.of()
                : against(session, opening.purge(session, origin));
    }

    private SessionView.GasView gas(ChamberSession session, Moment now) {
        Optional<Purge> running = session.gas().purge().filter(purge -> purge.stoppedAt().isEmpty());
        Optional<GasLimits> limits = running.map(Purge::limits).or(() -> gear.limits(session.chamber()));
        return new SessionView.GasView(limits, meters.oxygen(session.chamber()), meters.moisture(session.chamber()),
                meters.room(session.chamber()), gas.judge(session, now),
                running.map(purge -> now.since(purge.startedAt())).orElse(Duration.ZERO),
                running.flatMap(Purge::forecast));
    }

    private Optional<SessionView.LockView> lock(ChamberSession session, Origin origin) {
        return session.lockStation().filter(any -> session.phase().isShut()).map(station -> {
            Lock lock = session.lock();
            Optional<MeterFact> oxygen = meters.lockOxygen(station);
            Optional<LockNeed> need = gear.lockNeed(session.chamber(), origin.at());
            Map<LockMove, List<Refusal>> moves = moves(session, oxygen, need, origin);
            boolean purging = lock.doors() == Lock.Doors.PURGING;
            return new SessionView.LockView(lock.doors(), moves.get(LockMove.OPEN_INNER).isEmpty(),
                    session.in(Where.LOCK_INBOUND), session.in(Where.LOCK_OUTBOUND), oxygen,
                    lock.need().filter(any -> purging), lock.purgedFor(origin.at()), readyAt(lock, purging),
                    lock.cyclesDone(), afterOpening(session, oxygen, lock.need()), moves);
        });
    }

    private static Optional<Moment> readyAt(Lock lock, boolean purging) {
        return lock.need().filter(need -> purging && need.meter().isEmpty()
                && need.method() == LockNeed.Method.SWEEP).map(need -> lock.since().plus(need.sweep()));
    }

    /** By the lock's meter, else by the most that the lock may have when its inner door opens. */
    private Optional<BigDecimal> afterOpening(
            ChamberSession session, Optional<MeterFact> lockOxygen, Optional<LockNeed> need) {
        Optional<BigDecimal> inside = meters.oxygen(session.chamber()).filter(MeterFact::canBeUsed)
                .flatMap(MeterFact::value);
        Optional<BigDecimal> inLock = lockOxygen.filter(MeterFact::canBeUsed).flatMap(MeterFact::value)
                .or(() -> need.map(LockNeed::oxygenPpmMax));
        return inside.flatMap(chamber -> inLock.flatMap(lock ->
                gear.oxygenPpmAfterOpening(session.chamber(), chamber, lock)));
    }

    private static Map<LockMove, List<Refusal>> moves(ChamberSession session, Optional<MeterFact> oxygen,
            Optional<LockNeed> need, Origin origin) {
        Map<LockMove, List<Refusal>> moves = new EnumMap<>(LockMove.class);
        moves.put(LockMove.OPEN_OUTER, against(session, new SessionCommand.OpenOuter(session.id(), origin)));
        need.ifPresent(worked -> {
            moves.put(LockMove.SHUT_OUTER, against(session,
                    new SessionCommand.ShutOuter(session.id(), worked, origin)));
            moves.put(LockMove.PURGE, against(session, new SessionCommand.PurgeLock(session.id(), worked, origin)));
        });
        moves.put(LockMove.NOTE_CYCLE, against(session, new SessionCommand.NoteCycle(session.id(), origin)));
        moves.put(LockMove.OPEN_INNER, against(session, new SessionCommand.OpenInner(
                session.id(), oxygen, Optional.empty(), true, origin, SOMEBODY)));
        moves.put(LockMove.SHUT_INNER, against(session, new SessionCommand.ShutInner(session.id(), origin)));
        return moves;
    }

    private static List<Refusal> against(ChamberSession session, SessionCommand command) {
        return SessionDecider.decide(Optional.of(session), command)
                instanceof Decision.Refused<SessionEvent> refused ? refused.refusals() : List.of();
    }
}
