package brightseam.ui.bench;

import brightseam.kernel.Moment;
import brightseam.procedure.Gap;
import java.util.List;
import java.util.Optional;

/**
 * What the bench shows of a load, as data. Two equal ones look the same, so that an equal one need not be drawn anew.
 *
 * @param line above the title: step and station
 * @param title the step, or what stands in its place
 * @param instruction in large type, three lines at most
 * @param load which travellers, how many pieces of what
 * @param where the bin that they are in, in words
 * @param steps the strip
 * @param hurry the gap that runs
 * @param doing the one thing to do
 * @param apart one sentence for each traveller in the bin that stands elsewhere
 * @param window the clean window in words, where one is open
 * @param gloves what is to be done about gloves that are spent in the middle of a step
 * @param also what other procedures of the load say about the step
 */
record BenchCard(
        String line,
        String title,
        String instruction,
        String load,
        String where,
        List<Mark> steps,
        Optional<Hurry> hurry,
        Doing doing,
        List<String> apart,
        Optional<String> window,
        Optional<String> gloves,
        List<String> also) {

    /** One step of the strip. */
    record Mark(int number, String title, Standing standing) {}

    /** Where a step stands. */
    enum Standing {
        /** Signed or stamped. */
        SIGNED,
        /** The one to do now. */
        NOW,
        /** Not reached. */
        TO_COME,
        /** An inspection point not reached. */
        STAMP_TO_COME,
        /** Signed once, undone by a return. */
        SUPERSEDED,
        /** Stopped by an open nonconformance. */
        STOPPED
    }

    /**
     * A gap that runs.
     *
     * @param next the step that has to begin
     * @param passedOver whether the card shows the step before it, so that there is a way to {@code next}
     */
    record Hurry(String next, Gap gap, Moment since, boolean passedOver) {}
}
