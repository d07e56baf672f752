package brightseam.chamber.shell;

import brightseam.chamber.Chamber;
import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.Series;
import brightseam.device.shell.Readings;
import brightseam.kernel.StationId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** The gauges of the register of meters. A pressure meter in the supply shows bar above the room's. */
@Component
final class MeterGauges implements ArgonGauges {

    private final Readings readings;

    MeterGauges(Readings readings) {
        this.readings = readings;
    }

    @Override
    public Optional<Gauged> now(StationId chamber, MeterQuantity quantity) {
        return readings.now(chamber, MeterPlace.SUPPLY, quantity).filter(MeterNow::isUsable)
                .flatMap(now -> now.last().map(last ->
                        new Gauged(now.meter().id(), last.elapsedMillis(), last.value())));
    }

    @Override
    public Optional<Gauged> lastIn(StationId chamber, MeterQuantity quantity, long fromMillis, long toMillis) {
        return readings.now(chamber, MeterPlace.SUPPLY, quantity).flatMap(now -> {
            Series series = readings.series(now.meter().id(), Math.max(0, fromMillis), Math.max(0, toMillis));
            for (int i = series.size() - 1; i >= 0; i--) {
                if (series.isUsable(i)) {
                    return Optional.of(new Gauged(now.meter().id(), series.millis(i), series.value(i)));
                }
            }
            return Optional.empty();
        });
    }

    @Override
    public List<Series> flows(Chamber chamber, long fromMillis, long toMillis) {
        List<MeterNow> all = Stream.of(chamber.station(), chamber.terms().lock().station())
                .flatMap(station -> readings.at(station).stream())
                .filter(now -> now.meter().quantity() == MeterQuantity.FLOW_LITRES_PER_MINUTE).toList();
        List<MeterNow> supply = all.stream().filter(now -> now.meter().place() == MeterPlace.SUPPLY).toList();
        return (supply.isEmpty() ? all : supply.subList(0, 1)).stream()
                .map(now -> readings.series(now.meter().id(), fromMillis, toMillis)).toList();
    }
}
