package brightseam.ui.chamber;

import brightseam.kernel.KitId;
import brightseam.kernel.LabelEntry;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.Outcome;
import brightseam.people.Recognition;
import brightseam.people.Signer;
import brightseam.session.ChamberSession;
import brightseam.session.Lock;
import brightseam.session.Placed;
import brightseam.traveller.shell.Actor;
import brightseam.ui.parts.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Carries out what somebody does to a session and its lock, and says what became of it. */
final class SessionDeeds {

    private final ChamberServices services;
    private final Actor actor;

    SessionDeeds(ChamberServices services, Actor actor) {
        this.services = services;
        this.actor = actor;
    }

    /** Opens a session of {@code kit}; answers with its name where it was opened. */
    Verdict open(KitId kit, StationId chamber, Signer signer, java.util.function.Consumer<SessionId> opened) {
        return told("Opened", () -> services.actions().open(actor, kit, chamber, signer), session -> {
            opened.accept(session.id());
            return session.id() + " at " + chamber + ".";
        });
    }

    Verdict checkIn(SessionId session, String label, LabelEntry entry) {
        return told("In", () -> services.actions().checkIn(actor.by(entry), session, label),
                state -> label + " is checked in.");
    }

    Verdict takeBack(SessionId session, String label, LabelEntry entry) {
        return told("Taken back", () -> services.actions().takeBack(actor.by(entry), session, label),
                state -> label + " is out again.");
    }

    /** What a scan does at the lock, by which door is open. */
    Verdict atLock(ChamberSession session, String label, LabelEntry entry) {
        Actor by = actor.by(entry);
        boolean lies = session.placed(label).filter(Placed::isInLock).isPresent();
        if (session.lock().doors() == Lock.Doors.INNER_OPEN) {
            return lies ? told("Back inside", () -> services.lock().takeOut(by, session.id(), label),
                    state -> label + " stays in the chamber.")
                    : told("In the lock", () -> services.lock().putOut(by, session.id(), label),
                            state -> label + " goes out next.");
        }
        return lies ? told("Out of the lock", () -> services.lock().takeOut(by, session.id(), label),
                state -> label + " is outside.")
                : told("In the lock", () -> services.lock().putIn(by, session.id(), label),
                        state -> label + " goes in next.");
    }

    /** Carries out what was asked about, once everything is said. */
    Verdict act(SessionId session, Asked asked, Optional<Signer> signer) {
        List<SupplyId> touching = asked.scanned().stream().map(SupplyId::new).toList();
        String reason = asked.reason().orElse("");
        Supplier<Outcome<ChamberSession>> deed = switch (asked.act().kind()) {
            case LEAVE_OUT -> () -> services.actions().leaveOut(actor, session, asked.act().subject(), reason,
                    signer.orElseThrow());
            case CLOSE_CHAMBER -> () -> services.actions().closeChamber(actor, session, asked.checked(), touching,
                    signer.orElseThrow());
            case ABANDON -> () -> services.actions().abandon(actor, session, reason, asked.checked(),
                    signer.orElseThrow());
            case START_PURGE -> () -> services.actions().startPurge(actor, session);
            case STOP_PURGE -> () -> services.actions().stopPurge(actor, session, reason);
            case OPEN_CHAMBER -> () -> services.actions().openChamber(actor, session, asked.checked(),
                    signer.orElseThrow());
            case SIGN_WELDS -> () -> services.actions().signWelds(actor, session, signer.orElseThrow());
            case OPEN_OUTER -> () -> services.lock().openOuter(actor, session);
            case SHUT_OUTER -> () -> services.lock().shutOuter(actor, session);
            case PURGE_LOCK -> () -> services.lock().purge(actor, session);
            case NOTE_CYCLE -> () -> services.lock().noteCycle(actor, session);
            case OPEN_INNER -> () -> services.lock().openInner(actor, session, asked.checked(), touching,
                    signer.orElseThrow());
            case SHUT_INNER -> () -> services.lock().shutInner(actor, session);
            case OPEN_SESSION, TAKE_BACK, END_SESSION, STAY_SHUT, CONFIRM_BACK_SIDE, ARM, TACK_FIRST, WELD_NEXT,
                    REPAIR_NEXT -> throw new IllegalArgumentException("nothing to store: " + asked.act().kind());
        };
        return told(word(asked.act().kind()), deed, state -> said(asked.act().kind()));
    }

    /** Recognises whoever is signed in by {@code pin}, and goes on. */
    Verdict signed(String pin, Function<Signer, Verdict> deed) {
        try {
            return switch (services.authenticator().signing(actor.tablet(), actor.badge(), pin)) {
                case Recognition.Recognised known -> deed.apply(known.signer());
                case Recognition.NotRecognised not -> Verdict.refused(services.wording(), not.refusals());
            };
        } catch (NotStoredException lost) {
            return Verdict.notStored();
        }
    }

    <T> Verdict told(String word, Supplier<Outcome<T>> deed, Function<T, String> reason) {
        try {
            return switch (deed.get()) {
                case Outcome.Done<T> done -> new Verdict.Accepted(word, reason.apply(done.result()));
                case Outcome.Refused<T> refused -> Verdict.refused(services.wording(), refused.refusals());
            };
        } catch (NotStoredException lost) {
            return Verdict.notStored();
        }
    }

    private static String word(Act.Kind kind) {
        return switch (kind) {
            case LEAVE_OUT -> "Left out";
            case CLOSE_CHAMBER -> "Closed";
            case ABANDON -> "Given up";
            case START_PURGE -> "Purging";
            case STOP_PURGE -> "Argon off";
            case OPEN_CHAMBER -> "Session over";
            case SIGN_WELDS -> "Signed";
            case OPEN_OUTER -> "Outer door open";
            case SHUT_OUTER, PURGE_LOCK -> "Lock purges";
            case NOTE_CYCLE -> "Counted";
            case OPEN_INNER -> "Inner door open";
            case SHUT_INNER -> "Inner door shut";
            case OPEN_SESSION, TAKE_BACK, END_SESSION, STAY_SHUT, CONFIRM_BACK_SIDE, ARM, TACK_FIRST, WELD_NEXT,
                    REPAIR_NEXT -> "";
        };
    }

    private static String said(Act.Kind kind) {
        return switch (kind) {
            case CLOSE_CHAMBER -> "What was checked in is passed in.";
            case START_PURGE -> "Turn the argon on now.";
            case STOP_PURGE -> "Turn the argon off now.";
            case OPEN_CHAMBER -> "What is welded is signed. Keep away from the opening until the air is measured.";
            case OPEN_INNER -> "What lay in the lock is passed in.";
            case LEAVE_OUT, ABANDON, SIGN_WELDS, OPEN_OUTER, SHUT_OUTER, PURGE_LOCK, NOTE_CYCLE, SHUT_INNER,
                    OPEN_SESSION, TAKE_BACK, END_SESSION, STAY_SHUT, CONFIRM_BACK_SIDE, ARM, TACK_FIRST,
                    WELD_NEXT, REPAIR_NEXT ->
                "Written down.";
        };
    }
}
