package brightseam.planner;

import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import java.util.List;
import java.util.OptionalInt;

/**
 * One stage of a basket's way through the line: a soak, a rinse, a drying, a wipe, a bagging.
 *
 * <p>The hold runs from the moment the basket is in until the lift out begins. The way from stage to stage is one
 * pair of hands' work without a break: lift, drip, carry, lower; only before a stage that {@code waits} may the basket
 * be set down at the stage's own station and wait there, taking up no room in it.
 *
 * @param step the procedure's step
 * @param stations where it may be done, in order of liking, locked ones among them
 * @param holdMinSeconds at least this long
 * @param holdMaxSeconds at most this long, where longer does harm
 * @param gapMaxSeconds the longest time from the end of this hold to the start of the next stage's
 * @param lowerSeconds hands' work to put the basket in
 * @param liftSeconds hands' work to take it out
 * @param dripSeconds how long it drains over the tank in the hands, after the lift
 * @param isAttended whether hands are needed all through the hold: wiping, checking, bagging, moving in acid
 * @param waits whether the basket may be set down at the station before the stage begins
 * @param isAtStationBefore whether it is done at whatever station the stage before was done at
 */
public record Stage(
        StepId step,
        List<StationId> stations,
        int holdMinSeconds,
        OptionalInt holdMaxSeconds,
        OptionalInt gapMaxSeconds,
        int lowerSeconds,
        int liftSeconds,
        int dripSeconds,
        boolean isAttended,
        boolean waits,
        boolean isAtStationBefore) {

    /** Copies the stations; refuses none at all, negative times and a maximum below the minimum. */
    public Stage {
        stations = List.copyOf(stations);
        if (stations.isEmpty()) {
            throw new IllegalArgumentException(step + ": no station");
        }
        if (holdMinSeconds < 0 || lowerSeconds < 0 || liftSeconds < 0 || dripSeconds < 0) {
            throw new IllegalArgumentException(step + ": a time below zero");
        }
        if (holdMaxSeconds.orElse(holdMinSeconds) < holdMinSeconds || gapMaxSeconds.orElse(0) < 0) {
            throw new IllegalArgumentException(step + ": a maximum below its minimum");
        }
    }

    /** An unattended stage with a shortest hold alone, and no time for handling. */
    public static Stage of(StepId step, List<StationId> stations, int holdMinSeconds) {
        return new Stage(step, stations, holdMinSeconds, OptionalInt.empty(), OptionalInt.empty(), 0, 0, 0,
                false, false, false);
    }

    /** The same with a longest hold. */
    public Stage upTo(int maxSeconds) {
        return withHoldMax(OptionalInt.of(maxSeconds));
    }

    /** The same with this longest hold, or with none. */
    public Stage withHoldMax(OptionalInt maxSeconds) {
        return new Stage(step, stations, holdMinSeconds, maxSeconds, gapMaxSeconds, lowerSeconds, liftSeconds,
                dripSeconds, isAttended, waits, isAtStationBefore);
    }

    /** The same with this longest gap behind it, or with none. */
    public Stage withGapMax(OptionalInt maxSeconds) {
        return new Stage(step, stations, holdMinSeconds, holdMaxSeconds, maxSeconds, lowerSeconds, liftSeconds,
                dripSeconds, isAttended, waits, isAtStationBefore);
    }

    /** The same with these handling times. */
    public Stage handled(int lower, int lift, int drip) {
        return new Stage(step, stations, holdMinSeconds, holdMaxSeconds, gapMaxSeconds, lower, lift, drip,
                isAttended, waits, isAtStationBefore);
    }

    /** The same, with hands needed all through. */
    public Stage attended() {
        return new Stage(step, stations, holdMinSeconds, holdMaxSeconds, gapMaxSeconds, lowerSeconds, liftSeconds,
                dripSeconds, true, waits, isAtStationBefore);
    }

    /** The same, where the basket may be set down and wait before it. */
    public Stage waiting() {
        return new Stage(step, stations, holdMinSeconds, holdMaxSeconds, gapMaxSeconds, lowerSeconds, liftSeconds,
                dripSeconds, isAttended, true, isAtStationBefore);
    }

    /** The same, at whatever station the stage before was done at. */
    public Stage atStationBefore() {
        return new Stage(step, stations, holdMinSeconds, holdMaxSeconds, gapMaxSeconds, lowerSeconds, liftSeconds,
                dripSeconds, isAttended, waits, true);
    }

    /** Hands' work from the end of the hold until the basket can be carried off, in seconds. */
    public int clearSeconds() {
        return liftSeconds + dripSeconds;
    }
}
