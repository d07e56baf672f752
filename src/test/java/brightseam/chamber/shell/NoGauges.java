package brightseam.chamber.shell;

import brightseam.chamber.Chamber;
import brightseam.device.MeterQuantity;
import brightseam.device.Series;
import brightseam.kernel.StationId;
import java.util.List;
import java.util.Optional;

/** A shop without a meter in its supply. */
final class NoGauges implements ArgonGauges {

    @Override
    public Optional<Gauged> now(StationId chamber, MeterQuantity quantity) {
        return Optional.empty();
    }

    @Override
    public Optional<Gauged> lastIn(StationId chamber, MeterQuantity quantity, long fromMillis, long toMillis) {
        return Optional.empty();
    }

    @Override
    public List<Series> flows(Chamber chamber, long fromMillis, long toMillis) {
        return List.of();
    }
}
