package brightseam.session;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.Syntax;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** What can be asked of one chamber session. Reasons are stripped and have at most 200 characters. */
public sealed interface SessionCommand {

    /** Which session. */
    SessionId session();

    /** When, by whom and where. */
    Origin origin();

    /**
     * Begins a session: the chamber is open, check-in may begin.
     *
     * @param lock the chamber's transfer lock; empty where it has none
     * @param list what the kit needs
     * @param chamberBusyWith an open session of the same chamber
     * @param kitBusyWith an open session of the same kit
     * @param objections what else stands against it: kit closed, chamber out of use
     */
    record OpenSession(SessionId session, KitId kit, StationId chamber, Optional<StationId> lock, ListFact list,
            Optional<SessionId> chamberBusyWith, Optional<SessionId> kitBusyWith, List<Refusal> objections,
            Origin origin, Signer signer) implements SessionCommand {
        /** Copies the list. */
        public OpenSession {
            objections = List.copyOf(objections);
        }
    }

    /** Lays a thing into the open chamber. */
    record CheckIn(SessionId session, ItemFact item, ListFact list, Origin origin) implements SessionCommand {}

    /** Takes a thing out of the open chamber again. */
    record TakeBack(SessionId session, String label, Origin origin) implements SessionCommand {}

    /** Lets a line of the list be closed without what it names. */
    record LeaveOut(SessionId session, String key, String reason, ListFact list, Origin origin, Signer signer)
            implements SessionCommand {
        /** Checks the reason. */
        public LeaveOut {
            reason = Syntax.text("reason", reason, 200);
        }
    }

    /**
     * Shuts the chamber over what is in it. The pass-in of the travellers inside is signed with it.
     *
     * @param oxygen the chamber's oxygen meter; empty where none is registered
     * @param cautionsRead whether the cautions were shown and read
     */
    record CloseChamber(SessionId session, ListFact list, Optional<MeterFact> oxygen, boolean cautionsRead,
            Origin origin, Signer signer) implements SessionCommand {}

    /**
     * Turns the argon on.
     *
     * @param argon what is connected; empty where nothing is
     * @param limits what has to be reached
     * @param forecast how long it is expected to take; empty where the limit is never reached or nobody can say
     * @param objections what else stands against it
     */
    record StartPurge(SessionId session, Optional<ArgonFact> argon, GasLimits limits, Optional<Duration> forecast,
            List<Refusal> objections, Origin origin) implements SessionCommand {
        /** Copies the list. */
        public StartPurge {
            objections = List.copyOf(objections);
        }
    }

    /**
     * Turns the argon off without opening the chamber.
     *
     * @param objections what stands against it in the joints: a hot one needs its argon
     */
    record StopPurge(SessionId session, String reason, List<Refusal> objections, Origin origin)
            implements SessionCommand {
        /** Checks the reason and copies the list. */
        public StopPurge {
            reason = Syntax.text("reason", reason, 200);
            objections = List.copyOf(objections);
        }
    }

    /** Has written down what the readings say of the gas; the server asks this by itself. */
    record NoteGas(SessionId session, Fitness fitness, Origin origin) implements SessionCommand {}

    /** Opens the lock's outer door. */
    record OpenOuter(SessionId session, Origin origin) implements SessionCommand {}

    /** Lays a late thing into the lock through the open outer door. */
    record PutInLock(SessionId session, ItemFact item, ListFact list, Origin origin) implements SessionCommand {}

    /**
     * Lays a thing from the chamber into the lock through the open inner door.
     *
     * @param objections what stands against it in the joints: it is hot, or an arc has no end
     */
    record PutOut(SessionId session, String label, List<Refusal> objections, Origin origin)
            implements SessionCommand {
        /** Copies the list. */
        public PutOut {
            objections = List.copyOf(objections);
        }
    }

    /** Takes a thing out of the lock through whichever door is open. */
    record TakeFromLock(SessionId session, String label, Origin origin) implements SessionCommand {}

    /** Shuts the lock's outer door, which begins its purge. */
    record ShutOuter(SessionId session, LockNeed need, Origin origin) implements SessionCommand {}

    /** Begins the purge of the shut lock anew. */
    record PurgeLock(SessionId session, LockNeed need, Origin origin) implements SessionCommand {}

    /** Counts one more cycle of pumping the lock down and filling it. */
    record NoteCycle(SessionId session, Origin origin) implements SessionCommand {}

    /**
     * Opens the lock's inner door. The pass-in of the travellers in the lock is signed with it.
     *
     * @param lockOxygen the lock's oxygen meter; empty where none is registered
     * @param chamberOxygen the chamber's oxygen meter
     * @param cautionsRead whether the cautions were shown and read
     */
    record OpenInner(SessionId session, Optional<MeterFact> lockOxygen, Optional<MeterFact> chamberOxygen,
            boolean cautionsRead, Origin origin, Signer signer) implements SessionCommand {}

    /** Shuts the lock's inner door. */
    record ShutInner(SessionId session, Origin origin) implements SessionCommand {}

    /** Has written down what an opening of the inner door did; the server asks this by itself. */
    record NotePass(SessionId session, int pass, LockPass.Effect effect, Origin origin) implements SessionCommand {}

    /**
     * Opens the chamber and ends the session. The weld step of the travellers is signed with it.
     *
     * @param argonUsed what was used, by supply; empty where nothing measures it
     * @param argonForecastStandardLitres what was expected when the purge began
     */
    record OpenChamber(SessionId session, OpeningFact opening, List<ArgonUse> argonUsed,
            Optional<BigDecimal> argonForecastStandardLitres, Origin origin, Signer signer)
            implements SessionCommand {
        /** Copies the list. */
        public OpenChamber {
            argonUsed = List.copyOf(argonUsed);
        }
    }

    /** Gives the session up; a shut chamber is opened by it. */
    record Abandon(SessionId session, String reason, OpeningFact opening, List<ArgonUse> argonUsed, Origin origin,
            Signer signer) implements SessionCommand {
        /** Checks the reason and copies the list. */
        public Abandon {
            reason = Syntax.text("reason", reason, 200);
            argonUsed = List.copyOf(argonUsed);
        }
    }

    /** When it is asked. */
    default Moment now() {
        return origin().at();
    }
}
