package brightseam.chamber.shell;

import brightseam.chamber.ArgonReading;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import java.util.Optional;

/**
 * A change-over as it is done at the manifold.
 *
 * @param station the chamber
 * @param off what comes off; empty where nothing does
 * @param on what goes on; empty where nothing does
 * @param offReading what was read off the one before it came off
 * @param onReading what was read off the other before it went on
 * @param offIsEmpty whether the one that comes off is done with
 */
public record ChangeOverOrder(
        StationId station,
        Optional<SupplyId> off,
        Optional<SupplyId> on,
        Optional<ArgonReading> offReading,
        Optional<ArgonReading> onReading,
        boolean offIsEmpty) {}
