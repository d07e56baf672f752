package brightseam.report;

import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.traveller.ArcFact;
import brightseam.traveller.LockPassFact;
import java.util.List;

/**
 * What happened to the lot in chamber sessions.
 *
 * @param entries how it was passed in, in order
 * @param locks its passes through the lock, in order
 * @param gear what touched its joints or measured there, each once
 * @param joints its joints, each run, in order
 * @param pending arcs of which no evidence is in yet
 */
public record ChamberPart(List<Entry> entries, List<LockPassFact> locks, List<Gear> gear, List<JointTaken> joints,
        List<Pending> pending) {

    /** Passed into the chamber. */
    public record Entry(SessionId session, StationId station, String way, Moment at, Who by) {}

    /** An arc that began. */
    public record Pending(ArcFact arc, Moment since) {}

    /** Copies the lists. */
    public ChamberPart {
        entries = List.copyOf(entries);
        locks = List.copyOf(locks);
        gear = List.copyOf(gear);
        joints = List.copyOf(joints);
        pending = List.copyOf(pending);
    }

    /** Whether the lot was never in a session. */
    public boolean isEmpty() {
        return entries.isEmpty() && locks.isEmpty() && joints.isEmpty() && pending.isEmpty();
    }
}
