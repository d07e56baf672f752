package brightseam.ui.meters;

import brightseam.device.Feed;
import brightseam.device.FeedTerms;
import brightseam.device.HealthRule;
import brightseam.device.Meter;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.MeterTerms;
import brightseam.device.SeriesText;
import brightseam.kernel.StationId;
import brightseam.line.Station;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Numbers;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** How a meter is installed. */
final class MeterFields extends Div {

    private final Select<Station> station = new Select<>();
    private final Select<MeterPlace> place = new Select<>();
    private final Select<MeterQuantity> quantity = new Select<>();
    private final TextField low = Forms.text("Range from", "in the unit of what it measures");
    private final TextField high = Forms.text("Range to", "at an end of it nothing is proven");
    private final TextField step = Forms.text("Resolution", "the smallest step it shows");
    private final TextField every = Forms.text("A reading every, s", "such as 0.1");
    private final TextField response = Forms.text("Response, s", "to 90 % of a step; data sheet");
    private final TextField missing = Forms.text("Silent after, readings", "as many missing ones");
    private final TextField frozen = Forms.text("Frozen after, s", "of the very same value; 0: never");
    private final TextField late = Forms.text("Late after, s", "from taken to here");
    private final TextField clock = Forms.text("Clock off by, s", "before it is said");
    private final FeedFields feed;

    /** Fields that show {@code now}, or what is usual. */
    MeterFields(List<Station> stations, Optional<Meter> now, boolean demo) {
        station.setLabel("Station");
        station.setItems(stations);
        station.setItemLabelGenerator(one -> one.id() + " " + one.title());
        place.setLabel("Gas from");
        place.setItems(MeterPlace.values());
        place.setItemLabelGenerator(MeterWording::place);
        quantity.setLabel("What it measures");
        quantity.setItems(MeterQuantity.values());
        quantity.setItemLabelGenerator(MeterWording::quantity);
        feed = new FeedFields(now.map(Meter::feed).orElse(new Feed.Http()), demo);
        add(Forms.row(station, place, quantity), Forms.row(low, high, step, every, response), feed,
                Forms.row(missing, frozen, late, clock));
        health(now.map(Meter::health).orElse(HealthRule.USUAL));
        now.ifPresent(meter -> fill(meter, stations));
    }

    /**
     * What the fields say.
     *
     * @throws IllegalArgumentException naming the field that is not filled in as it should be
     */
    MeterTerms terms() {
        StationId where = station.getOptionalValue().map(Station::id)
                .orElseThrow(() -> new IllegalArgumentException("station: choose one"));
        return new MeterTerms(where, chosen("gas from", place), chosen("what it measures", quantity),
                Numbers.decimal("range from", low.getValue()), Numbers.decimal("range to", high.getValue()),
                Numbers.decimal("resolution", step.getValue()), seconds("a reading every", every),
                seconds("response", response), FeedTerms.of(feed.feed()),
                new HealthRule(Numbers.whole("silent after", missing.getValue()), seconds("frozen after", frozen),
                        seconds("late after", late), seconds("clock off by", clock)));
    }

    private void health(HealthRule rule) {
        missing.setValue(String.valueOf(rule.silentAfterReadings()));
        frozen.setValue(seconds(rule.frozenAfter()));
        late.setValue(seconds(rule.lateAfter()));
        clock.setValue(seconds(rule.clockOffMax()));
    }

    private void fill(Meter meter, List<Station> stations) {
        stations.stream().filter(one -> one.id().equals(meter.station())).findFirst().ifPresent(station::setValue);
        place.setValue(meter.place());
        quantity.setValue(meter.quantity());
        low.setValue(SeriesText.plain(meter.rangeLow()));
        high.setValue(SeriesText.plain(meter.rangeHigh()));
        step.setValue(SeriesText.plain(meter.resolution()));
        every.setValue(seconds(meter.every()));
        response.setValue(seconds(meter.responseTime()));
    }

    private static <T> T chosen(String label, Select<T> field) {
        return field.getOptionalValue().orElseThrow(() -> new IllegalArgumentException(label + ": choose one"));
    }

    private static Duration seconds(String label, TextField field) {
        return Duration.ofMillis(Numbers.decimal(label, field.getValue()).movePointRight(3).longValue());
    }

    private static String seconds(Duration time) {
        return BigDecimal.valueOf(time.toMillis(), 3).stripTrailingZeros().toPlainString();
    }
}
