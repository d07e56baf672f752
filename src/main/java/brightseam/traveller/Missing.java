package brightseam.traveller;

import brightseam.kernel.BinId;
import brightseam.kernel.StepId;
import brightseam.procedure.BinClass;
import java.time.Duration;
import java.util.List;

/** One part of <i>ready to pass in</i> that a traveller lacks. */
public sealed interface Missing {

    /** An earlier step is not signed. */
    record StepNotSigned(StepId step) implements Missing {}

    /** An earlier inspection point is not stamped. */
    record NotStamped(StepId step) implements Missing {}

    /** Nonconformances are open. */
    record Quarantine(List<Integer> open) implements Missing {}

    /** No clean window is open. */
    record NoWindow() implements Missing {}

    /** Too little is left of it. */
    record TooLittleWindow(Duration left, Duration needed) implements Missing {}

    /** The pieces are in no bin, or in one that is not of a clean class. */
    record NotInCleanBin(List<BinClass> wanted) implements Missing {}

    /** Their bin is not closed. */
    record BinOpen(BinId bin) implements Missing {}
}
