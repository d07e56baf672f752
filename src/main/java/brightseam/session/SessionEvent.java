package brightseam.session;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** What happened in one session. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface SessionEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which session. */
    SessionId session();

    /** It was begun, with the list that it was begun on. */
    record Opened(Origin origin, SessionId session, KitId kit, StationId chamber, Optional<StationId> lock,
            List<Need> needs, Signer signer) implements SessionEvent {
        /** Copies the list. */
        public Opened {
            needs = List.copyOf(needs);
        }
    }

    /** The kit came to need something else. */
    record ListChanged(Origin origin, SessionId session, List<Need> needs) implements SessionEvent {
        /** Copies the list. */
        public ListChanged {
            needs = List.copyOf(needs);
        }
    }

    /** A thing was laid into the open chamber. */
    record CheckedIn(Origin origin, SessionId session, Item item) implements SessionEvent {}

    /** It was taken out again before the chamber was shut. */
    record TakenBack(Origin origin, SessionId session, String label) implements SessionEvent {}

    /** Something missing may stay out. */
    record LeftOutAllowed(Origin origin, SessionId session, String key, String reason, Signer signer)
            implements SessionEvent {}

    /**
     * The chamber was shut.
     *
     * @param inside labels of what is inside, sorted
     * @param oxygenMeter the label of the meter that watches it
     */
    record ChamberClosed(Origin origin, SessionId session, List<String> inside, String oxygenMeter, Signer signer)
            implements SessionEvent {
        /** Copies the list. */
        public ChamberClosed {
            inside = List.copyOf(inside);
        }
    }

    /** The argon was turned on. */
    record PurgeStarted(Origin origin, SessionId session, ArgonFact argon, GasLimits limits,
            Optional<Duration> forecast) implements SessionEvent {}

    /** The argon was turned off. */
    record PurgeStopped(Origin origin, SessionId session, String reason) implements SessionEvent {}

    /** The readings said that it is fit to weld, since {@code since}. */
    record FoundFit(Origin origin, SessionId session, Moment since, BigDecimal oxygenPpm,
            Optional<BigDecimal> moisturePpm) implements SessionEvent {}

    /** It is not fit to weld any more. */
    record FoundUnfit(Origin origin, SessionId session, List<Broken> reasons) implements SessionEvent {
        /** Copies the list. */
        public FoundUnfit {
            reasons = List.copyOf(reasons);
        }
    }

    /** What happened at the lock. */
    sealed interface AtLock extends SessionEvent {}

    /** The lock's outer door opened. */
    record OuterOpened(Origin origin, SessionId session) implements AtLock {}

    /** A late thing was laid into the lock from outside. */
    record PutInLock(Origin origin, SessionId session, Item item) implements AtLock {}

    /** A thing was laid into the lock from inside, in the opening numbered {@code pass}. */
    record PutOut(Origin origin, SessionId session, String label, int pass) implements AtLock {}

    /** A thing that was laid into the lock from outside was taken out of it again. */
    record TakenFromLock(Origin origin, SessionId session, String label) implements AtLock {}

    /** A thing that was laid into the lock from inside was taken back inside. */
    record TakenBackInside(Origin origin, SessionId session, String label, int pass) implements AtLock {}

    /** A thing left the chamber through the lock. */
    record PassedOut(Origin origin, SessionId session, String label) implements AtLock {}

    /** The outer door shut and the lock's purge began. */
    record OuterShut(Origin origin, SessionId session, LockNeed need) implements AtLock {}

    /** The purge of the shut lock began. */
    record LockPurgeStarted(Origin origin, SessionId session, LockNeed need) implements AtLock {}

    /** The lock was pumped down and filled; {@code number} counts from 1 in this purge. */
    record LockCycled(Origin origin, SessionId session, int number) implements AtLock {}

    /**
     * The inner door opened.
     *
     * @param pass its number in this session, from 1
     * @param in labels of what goes in with it, sorted
     * @param purgedFor how long the lock was purged
     * @param cycles how many cycles it had
     * @param lockOxygenPpm oxygen in the lock, where a meter tells
     * @param chamberOxygenPpm oxygen in the chamber, where a meter tells
     */
    record InnerOpened(Origin origin, SessionId session, int pass, List<String> in, Duration purgedFor, int cycles,
            Optional<BigDecimal> lockOxygenPpm, Optional<BigDecimal> chamberOxygenPpm, Signer signer)
            implements AtLock {
        /** Copies the list. */
        public InnerOpened {
            in = List.copyOf(in);
        }
    }

    /** The inner door shut. */
    record InnerShut(Origin origin, SessionId session, int pass) implements AtLock {}

    /** What an opening did to the chamber became known. */
    record PassJudged(Origin origin, SessionId session, int pass, LockPass.Effect effect) implements AtLock {}

    /** The chamber was opened and the session is over. */
    record Ended(Origin origin, SessionId session, List<ArgonUse> argonUsed,
            Optional<BigDecimal> argonForecastStandardLitres, Optional<BigDecimal> roomOxygenPercent, Signer signer)
            implements SessionEvent {
        /** Copies the list. */
        public Ended {
            argonUsed = List.copyOf(argonUsed);
        }
    }

    /** It was given up. */
    record Abandoned(Origin origin, SessionId session, String reason, List<ArgonUse> argonUsed, Signer signer)
            implements SessionEvent {
        /** Copies the list. */
        public Abandoned {
            argonUsed = List.copyOf(argonUsed);
        }
    }
}
