package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.OptionalInt;

/** Where a basket is now. */
public sealed interface Progress {

    /** The station it is at. */
    StationId at();

    /**
     * It stands at a place, its first stage still to come.
     *
     * @param at where it stands
     * @param latestStartSeconds when the first stage has to have begun, where a gap is running
     */
    record Waiting(StationId at, OptionalInt latestStartSeconds) implements Progress {}

    /**
     * Its first stage has begun.
     *
     * @param at the station it is in
     * @param sinceSeconds when the hold began, zero or below
     */
    record InStage(StationId at, int sinceSeconds) implements Progress {
        /** Refuses a beginning that is still to come. */
        public InStage {
            if (sinceSeconds > 0) {
                throw new IllegalArgumentException("a stage in progress began before now");
            }
        }
    }

    /** Standing somewhere, with no gap running. */
    static Progress waitingAt(StationId at) {
        return new Waiting(at, OptionalInt.empty());
    }
}
