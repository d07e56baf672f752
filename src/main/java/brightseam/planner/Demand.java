package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;

/** Something that a plan has to keep and that people could change; what a conflict is made of. */
public sealed interface Demand {

    /** The kit is due at {@code dueSeconds}. */
    record SessionDue(KitId kit, int dueSeconds) implements Demand {}

    /** The person's work ends at {@code endSeconds}. */
    record ShiftEnds(BadgeId person, int endSeconds) implements Demand {}

    /** Nothing may go into the station. */
    record TankLocked(StationId station) implements Demand {}

    /** The station takes {@code capacityBaskets} at once. */
    record TankRoom(StationId station, int capacityBaskets) implements Demand {}

    /** The step may last {@code maxSeconds} at most. */
    record HoldMaximum(String basket, StepId step, int maxSeconds) implements Demand {}

    /** The next step has to begin {@code maxSeconds} after this one's end at the latest. */
    record GapMaximum(String basket, StepId step, int maxSeconds) implements Demand {}

    /** A gap is running: the step has to begin at {@code latestSeconds} at the latest. */
    record GapRunning(String basket, StepId step, int latestSeconds) implements Demand {}

    /** The clean window of the basket's pieces has to be open, with the margin, when the kit's session starts. */
    record WindowOpen(KitId kit, String basket) implements Demand {}

    /** So many pairs of hands do one thing at a time. */
    record PairsOfHands(int count) implements Demand {}
}
