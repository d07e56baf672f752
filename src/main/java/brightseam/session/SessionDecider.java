package brightseam.session;

import static brightseam.people.Role.FABRICATOR;
import static brightseam.people.Role.LEAD;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Decides what a {@link SessionCommand} does to a session. Fabricators and leads run one; only a lead bends it. */
public final class SessionDecider {

    private SessionDecider() {}

    /** The events that follow from {@code command}, or every rule against it. */
    public static Decision<SessionEvent> decide(Optional<ChamberSession> session, SessionCommand command) {
        return session.map(known -> onKnown(known, command)).orElseGet(() -> onUnknown(command));
    }

    private static Decision<SessionEvent> onUnknown(SessionCommand command) {
        return command instanceof SessionCommand.OpenSession first ? open(first)
                : Decision.refused(List.of(new SessionRefusal.SessionUnknown(command.session())));
    }

    private static Decision<SessionEvent> onKnown(ChamberSession s, SessionCommand command) {
        return switch (command) {
            case SessionCommand.OpenSession ignored ->
                Decision.refused(List.of(new SessionRefusal.SessionAlreadyOpened(s.id())));
            case SessionCommand.CheckIn c -> checkIn(s, c);
            case SessionCommand.TakeBack c -> takeBack(s, c);
            case SessionCommand.LeaveOut c -> leaveOut(s, c);
            case SessionCommand.CloseChamber c -> ChamberDoor.close(s, c);
            case SessionCommand.StartPurge c -> Purging.start(s, c);
            case SessionCommand.StopPurge c -> Purging.stop(s, c);
            case SessionCommand.NoteGas c -> Purging.note(s, c);
            case SessionCommand.OpenOuter c -> LockHand.openOuter(s, c);
            case SessionCommand.PutInLock c -> LockHand.putInLock(s, c);
            case SessionCommand.PutOut c -> LockHand.putOut(s, c);
            case SessionCommand.TakeFromLock c -> LockHand.takeFromLock(s, c);
            case SessionCommand.ShutOuter c -> LockHand.shutOuter(s, c);
            case SessionCommand.PurgeLock c -> LockHand.purge(s, c);
            case SessionCommand.NoteCycle c -> LockHand.noteCycle(s, c);
            case SessionCommand.OpenInner c -> LockHand.openInner(s, c);
            case SessionCommand.ShutInner c -> LockHand.shutInner(s, c);
            case SessionCommand.NotePass c -> LockHand.notePass(s, c);
            case SessionCommand.OpenChamber c -> ChamberDoor.open(s, c);
            case SessionCommand.Abandon c -> ChamberDoor.abandon(s, c);
        };
    }

    private static Decision<SessionEvent> open(SessionCommand.OpenSession c) {
        return signedBy(c.signer(), FABRICATOR, LEAD)
                .refuseFor(c.chamberBusyWith().map(other -> new SessionRefusal.ChamberBusy(c.chamber(), other)))
                .refuseFor(c.kitBusyWith().map(other -> new SessionRefusal.KitBusy(c.kit(), other)))
                .refuseAll(c.objections())
                .accept(new SessionEvent.Opened(c.origin(), c.session(), c.kit(), c.chamber(), c.lock(),
                        c.list().needs(), c.signer()));
    }

    private static Decision<SessionEvent> checkIn(ChamberSession s, SessionCommand.CheckIn c) {
        return checkingIn(s).refuseAll(new ItemRules(s, c.list()).against(c.item()))
                .accept(withList(s, c.list(), c, new SessionEvent.CheckedIn(c.origin(), s.id(), c.item().item())));
    }

    private static Decision<SessionEvent> takeBack(ChamberSession s, SessionCommand.TakeBack c) {
        return checkingIn(s)
                .refuseIf(s.placed(c.label()).isEmpty(), () -> new SessionRefusal.ItemNotCheckedIn(c.label()))
                .accept(new SessionEvent.TakenBack(c.origin(), s.id(), c.label()));
    }

    private static Decision<SessionEvent> leaveOut(ChamberSession s, SessionCommand.LeaveOut c) {
        Optional<ListLine> line = s.list(c.list().needs()).stream()
                .filter(one -> one.need().key().equals(c.key())).findFirst();
        return signedBy(c.signer(), LEAD).refuseAll(checkingIn(s).<SessionEvent>accept(List.of())
                        instanceof Decision.Refused<SessionEvent> refused ? refused.refusals() : List.of())
                .refuseIf(line.isEmpty(), () -> new SessionRefusal.NotOnTheList(c.key(), s.kit()))
                .refuseFor(line.filter(one -> one.missing() == 0)
                        .map(one -> new SessionRefusal.NothingMissing(one.need().title())))
                .accept(withList(s, c.list(), c, new SessionEvent.LeftOutAllowed(
                        c.origin(), s.id(), c.key(), c.reason(), c.signer())));
    }

    /** Check-in goes on: the chamber is open. */
    static Rules checkingIn(ChamberSession s) {
        return notOver(s).refuseIf(s.phase().isShut(), () -> new SessionRefusal.ChamberShut(s.id(), s.phase()));
    }

    static Rules notOver(ChamberSession s) {
        return Rules.check().refuseIf(s.phase().isOver(), () -> new SessionRefusal.SessionOver(s.id(), s.phase()));
    }

    static Rules signedBy(Signer signer, Role... roles) {
        return Rules.check().refuseIf(Arrays.stream(roles).noneMatch(signer::has),
                () -> new SessionRefusal.SessionRoleMissing(signer.badge(), List.of(roles)));
    }

    /** {@code event}, after a note of the list where that has changed since it was last read. */
    static List<SessionEvent> withList(ChamberSession s, ListFact list, SessionCommand c, SessionEvent event) {
        List<SessionEvent> events = new ArrayList<>();
        if (!s.needs().equals(list.needs())) {
            events.add(new SessionEvent.ListChanged(c.origin(), s.id(), list.needs()));
        }
        events.add(event);
        return events;
    }
}
