package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import java.util.Set;

/** A rule of the line that a plan breaks, with the evidence. Seconds count from the moment the problem was stated. */
public sealed interface Violation {

    /** A stage that has to be in the plan is not. */
    record StageMissing(String basket, StepId step) implements Violation {}

    /** A basket that has begun, or that the goal wants whole, was left out. */
    record LeftOut(String basket) implements Violation {}

    /** A stage or an action that nobody asked for, or a second time. */
    record NotAskedFor(String basket, int stage) implements Violation {}

    /** The step is not done at that station. */
    record WrongStation(String basket, StepId step, StationId station) implements Violation {}

    /** Nothing may go into that station. */
    record StationLocked(String basket, StepId step, StationId station) implements Violation {}

    /** It begins before it can. */
    record StartsTooEarly(String basket, StepId step, int startSeconds, int earliestSeconds) implements Violation {}

    /** A gap that was running is overrun. */
    record StartsTooLate(String basket, StepId step, int startSeconds, int latestSeconds) implements Violation {}

    /** The hold is shorter than its minimum. */
    record HoldTooShort(String basket, StepId step, int seconds, int minSeconds) implements Violation {}

    /** The hold is longer than its maximum. */
    record HoldTooLong(String basket, StepId step, int seconds, int maxSeconds) implements Violation {}

    /** The time from the end of {@code step} to the start of the next is longer than its gap. */
    record GapTooLong(String basket, StepId step, int seconds, int maxSeconds) implements Violation {}

    /** {@code step} begins before the basket can be there: lifted, dripped, carried and lowered. */
    record TransferTooFast(String basket, StepId step, int seconds, int neededSeconds) implements Violation {}

    /** Hands are needed and nobody's are there, or not for the whole time. */
    record NoHands(String basket, StepId step, Action.Kind kind, int fromSeconds, int untilSeconds)
            implements Violation {}

    /** The basket goes from one person's hands into another's with nowhere to stand in between. */
    record HandedOver(String basket, StepId step, BadgeId from, BadgeId to) implements Violation {}

    /** A person does something outside of working hours. */
    record OutOfShift(BadgeId person, int fromSeconds, int untilSeconds) implements Violation {}

    /** A person would have to be at {@code to} before the way there from {@code from} can be walked. */
    record InTwoPlaces(BadgeId person, StationId from, StationId to, int seconds, int neededSeconds)
            implements Violation {}

    /** More baskets at once than the tank takes. */
    record TankOverfull(StationId station, int atSeconds, Set<String> baskets, int capacityBaskets)
            implements Violation {}

    /** A basket is ready after its kit is due. */
    record NotReadyForSession(KitId kit, String basket, int readySeconds, int dueSeconds) implements Violation {}

    /** A basket's clean window has less left at the session than it needs. */
    record WindowRunsOut(KitId kit, String basket, int shortfallSeconds) implements Violation {}

    /** A basket is ready after the limit that was asked for. */
    record NotReadyBy(String basket, int readySeconds, int limitSeconds) implements Violation {}
}
