package brightseam.traveller;

import brightseam.procedure.WindowLimits;
import java.time.Duration;

/** How pieces are kept while their clean window runs; better handling makes it run slower. */
public enum Handling {
    /** In the open, in a bin that is not closed, or in none. */
    OPEN,
    /** In a closed clean bin. */
    CLOSED_CLEAN_BIN,
    /** In a sealed bag. */
    SEALED_BAG;

    /** How long the whole window lasts in this state. */
    public Duration limitOf(WindowLimits limits) {
        return switch (this) {
            case OPEN -> limits.open();
            case CLOSED_CLEAN_BIN -> limits.closedCleanBin();
            case SEALED_BAG -> limits.sealedBag();
        };
    }
}
