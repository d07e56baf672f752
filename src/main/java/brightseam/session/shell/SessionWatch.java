package brightseam.session.shell;

import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.Prepared;
import brightseam.ledger.shell.Lead;
import brightseam.session.ChamberSession;
import brightseam.session.GasLimits;
import brightseam.session.LockPass;
import brightseam.session.SessionCommand;
import brightseam.session.SessionDecider;
import brightseam.session.SessionEvent;
import brightseam.traveller.shell.Actor;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/**
 * Looks at the readings every second and has written down when a chamber becomes fit to weld, when it stops being so,
 * and what each opening of the lock's inner door did. No arc rests on it: whoever strikes one asks the readings.
 */
@Component
class SessionWatch {

    /** How long the chamber is looked at after an inner door was shut; common practice. */
    static final Duration WATCHED_AFTER_PASS = Duration.ofMinutes(5);

    private static final Logger LOG = LoggerFactory.getLogger(SessionWatch.class);
    private static final Actor SHOP = new Actor(Origin.SHOP, "server");

    private final Sessions sessions;
    private final SessionActions actions;
    private final SessionGas gas;
    private final GasMeters meters;
    private final TravellerRecord record;
    private final Lead lead;

    SessionWatch(Sessions sessions, SessionActions actions, SessionGas gas, GasMeters meters,
            TravellerRecord record, Lead lead) {
        this.sessions = sessions;
        this.actions = actions;
        this.gas = gas;
        this.meters = meters;
        this.record = record;
        this.lead = lead;
    }

    @Scheduled(fixedDelay = 1000)
    void look() {
        if (!lead.isLead()) {
            return;
        }
        for (ChamberSession session : sessions.open()) {
            try {
                noteGas(session);
                session.passesToJudge().forEach(pass -> judge(session, pass));
            } catch (NotStoredException lost) {
                LOG.warn("what is due on {} could not be written down yet: {}", session.id(), lost.getMessage());
            }
        }
    }

    private void noteGas(ChamberSession session) {
        if (!session.phase().isPurged()) {
            return;
        }
        Origin origin = actions.origin(SHOP);
        if (changes(session, noted(session, origin))) {
            actions.on(session.id(), SHOP, this::noted);
        }
    }

    private SessionCommand noted(ChamberSession session, Origin origin) {
        return new SessionCommand.NoteGas(session.id(), gas.judge(session, origin.at()), origin);
    }

    private static boolean changes(ChamberSession session, SessionCommand command) {
        return SessionDecider.decide(Optional.of(session), command)
                instanceof Decision.Accepted<SessionEvent> accepted && !accepted.events().isEmpty();
    }

    private void judge(ChamberSession session, LockPass pass) {
        Moment until = pass.shutAt().orElseThrow().plus(WATCHED_AFTER_PASS);
        Optional<GasLimits> limits = session.gas().limits();
        if (limits.isEmpty() || actions.origin(SHOP).at().isBefore(until)) {
            return;
        }
        meters.highest(session.chamber(), pass.openedAt(), until, limits.get().longestGap())
                .ifPresent(highest -> note(session, pass, new LockPass.Effect(
                        highest.oxygenPpm(), WATCHED_AFTER_PASS, highest.proven())));
    }

    private void note(ChamberSession session, LockPass pass, LockPass.Effect effect) {
        actions.commit(() -> actions.with(session.id(), state -> {
            Origin origin = actions.origin(SHOP);
            Prepared<ChamberSession> noted = sessions.prepare(session.id(), List.of(
                    new SessionCommand.NotePass(session.id(), pass.number(), effect, origin)));
            boolean fresh = state.passesToJudge().stream().anyMatch(one -> one.number() == pass.number());
            return fresh && noted instanceof Prepared.Ready<ChamberSession> ready ? SessionActions.joined(noted,
                    record.notePassIn(origin, ready.result(), ready.result().passes().get(pass.number() - 1))) : noted;
        }));
    }
}
