package brightseam.planner;

import java.util.OptionalInt;

/**
 * The clean window of a basket's pieces, used up at one rate until they are sealed and at another from then on; the
 * shares add up, as they do on the traveller.
 *
 * @param openedByStage number of the stage whose end opens it; empty where it is open already
 * @param openedAtSeconds where it is open already: when it would have been opened, had it run at the first rate since
 * @param openSeconds the whole window until sealing
 * @param sealedByStage number of the stage whose end seals the pieces; empty where nothing does
 * @param sealedSeconds the whole window from sealing on
 */
public record PartWindow(
        OptionalInt openedByStage, int openedAtSeconds, int openSeconds, OptionalInt sealedByStage,
        int sealedSeconds) {

    /** Refuses windows that are not above zero. */
    public PartWindow {
        if (openSeconds <= 0 || sealedSeconds <= 0) {
            throw new IllegalArgumentException("a window lasts longer than nothing");
        }
    }

    /** One that a stage opens and a later one seals. */
    public static PartWindow of(int openedByStage, int openSeconds, int sealedByStage, int sealedSeconds) {
        return new PartWindow(OptionalInt.of(openedByStage), 0, openSeconds, OptionalInt.of(sealedByStage),
                sealedSeconds);
    }
}
