package brightseam.weld;

import java.util.Optional;

/**
 * The filler that is at hand.
 *
 * @param label the label of its lot
 * @param fillerClass what it is; empty where no class is known for it
 * @param inside whether it was checked into the session
 */
public record FillerFact(String label, Optional<FillerClass> fillerClass, boolean inside) {}
