package brightseam.session.shell;

import brightseam.ledger.Entry;
import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.session.ChamberSession;
import brightseam.session.SessionEvent;
import java.util.Map;

/** The streams {@code session/...}: what their events are called. A name is never given to another form. */
final class SessionStreams {

    static final Map<String, Class<? extends SessionEvent>> TYPES = Map.ofEntries(
            Map.entry("session-opened.1", SessionEvent.Opened.class),
            Map.entry("session-list-changed.1", SessionEvent.ListChanged.class),
            Map.entry("session-checked-in.1", SessionEvent.CheckedIn.class),
            Map.entry("session-taken-back.1", SessionEvent.TakenBack.class),
            Map.entry("session-left-out-allowed.1", SessionEvent.LeftOutAllowed.class),
            Map.entry("session-chamber-closed.1", SessionEvent.ChamberClosed.class),
            Map.entry("session-purge-started.1", SessionEvent.PurgeStarted.class),
            Map.entry("session-purge-stopped.1", SessionEvent.PurgeStopped.class),
            Map.entry("session-found-fit.1", SessionEvent.FoundFit.class),
            Map.entry("session-found-unfit.1", SessionEvent.FoundUnfit.class),
            Map.entry("session-outer-opened.1", SessionEvent.OuterOpened.class),
            Map.entry("session-put-in-lock.1", SessionEvent.PutInLock.class),
            Map.entry("session-put-out.1", SessionEvent.PutOut.class),
            Map.entry("session-taken-from-lock.1", SessionEvent.TakenFromLock.class),
            Map.entry("session-taken-back-inside.1", SessionEvent.TakenBackInside.class),
            Map.entry("session-passed-out.1", SessionEvent.PassedOut.class),
            Map.entry("session-outer-shut.1", SessionEvent.OuterShut.class),
            Map.entry("session-lock-purge-started.1", SessionEvent.LockPurgeStarted.class),
            Map.entry("session-lock-cycled.1", SessionEvent.LockCycled.class),
            Map.entry("session-inner-opened.1", SessionEvent.InnerOpened.class),
            Map.entry("session-inner-shut.1", SessionEvent.InnerShut.class),
            Map.entry("session-pass-judged.1", SessionEvent.PassJudged.class),
            Map.entry("session-ended.1", SessionEvent.Ended.class),
            Map.entry("session-abandoned.1", SessionEvent.Abandoned.class));

    static final StreamKind<ChamberSession, SessionEvent> KIND =
            new StreamKind<>("session", new EventCodec<>(TYPES), ChamberSession::evolve);

    private SessionStreams() {}

    /** Whether {@code entry} is one of these events. */
    static boolean isMine(Entry entry) {
        return entry.stream().family().equals(KIND.family()) && KIND.codec().knows(entry.type());
    }
}
