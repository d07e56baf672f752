package brightseam.supply;

import brightseam.kernel.Refusal;
import java.util.List;

/**
 * What was scanned before a step.
 *
 * @param known those of it that are registered, in the order of the scans
 * @param objections everything that stands against any of it
 */
public record Scanned(List<Supply> known, List<Refusal> objections) {

    /** Copies the lists. */
    public Scanned {
        known = List.copyOf(known);
        objections = List.copyOf(objections);
    }
}
