package brightseam.ui.meters;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.chart.SeriesChart;
import brightseam.device.Feed;
import brightseam.device.Meter;
import brightseam.device.MeterNow;
import brightseam.device.MeterRecord;
import brightseam.device.Reading;
import brightseam.device.SampleMeters;
import brightseam.device.Series;
import brightseam.device.Trouble;
import brightseam.kernel.Moment;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MeterLineTest {

    private static final Meter METER = SampleMeters.oxygen(new Feed.Http());

    private static MeterRecord record(Optional<String> outOfUse) {
        return new MeterRecord(METER, outOfUse, Optional.empty(), Optional.empty());
    }

    private static MeterLine line(Duration age, Trouble... troubles) {
        return MeterLine.of(record(Optional.empty()), new MeterNow(METER, Optional.of(new Reading(1000, -0.5)), age,
                Set.of(troubles), false), Optional.empty());
    }

    @Test
    void a_value_comes_with_its_unit_and_its_age() {
        MeterLine line = line(Duration.ofMillis(340));
        assertThat(line.value()).isEqualTo("−0.5\u00a0ppm O2");
        assertThat(MeterWording.value(METER, 207_279.80000000002)).isEqualTo("207279.8\u00a0ppm O2");
        assertThat(line.age()).isEqualTo("0.3 s old");
        assertThat(line.state()).isEqualTo("In order");
        assertThat(line.stops()).isFalse();
        assertThat(line.what()).isEqualTo("Oxygen, ppm, in the chamber S-CHAMBER-1");
    }

    @Test
    void every_trouble_is_told_with_what_to_do() {
        MeterLine line = line(Duration.ofSeconds(14), Trouble.SILENT, Trouble.UNCALIBRATED);
        assertThat(line.state()).isEqualTo("Silent");
        assertThat(line.detail()).isEqualTo("No reading for 14 s. Look at the device and its cable. "
                + "Its calibration is over. Have it calibrated, or use another.");
        assertThat(line.stops()).isTrue();
        for (Trouble trouble : Trouble.values()) {
            assertThat(line(Duration.ofSeconds(14), trouble).detail()).as(trouble.name()).endsWith(".");
        }
    }

    @Test
    void out_of_use_says_why_and_a_device_that_is_not_answered_says_so() {
        MeterNow now = new MeterNow(METER, Optional.empty(), Duration.ZERO, Set.of(Trouble.NEVER_HEARD), false);
        assertThat(MeterLine.of(record(Optional.of("cell spent")), now, Optional.empty()))
                .extracting(MeterLine::state, MeterLine::detail, MeterLine::value)
                .containsExactly("Out of use", "cell spent", "no reading yet");
        assertThat(MeterLine.of(record(Optional.empty()), now, Optional.of("connection refused")).detail())
                .endsWith("The device answers: connection refused.");
    }

    @Test
    void a_chart_shows_gaps_as_gaps_and_powers_of_ten_only_where_there_are_some() {
        Series series = Series.of(List.of(new Reading(1_000, 10), new Reading(1_100, 20), new Reading(9_000, 30)));
        Moment now = new Moment(Instant.parse("2031-03-04T08:00:00Z"), 10_000);
        MeterSight sight = new MeterSight(MeterSight.Span.TEN_MINUTES, true, Optional.of(25.0));
        SeriesChart chart = sight.chart(METER, series, now, ZoneOffset.UTC);
        assertThat(chart.words()).contains("1 gap in the readings", "above the limit of 25", "highest 30");
        assertThat(chart.logarithmic()).isTrue();
        assertThat(sight.chart(METER, Series.of(List.of(new Reading(1_000, 0))), now, ZoneOffset.UTC).logarithmic())
                .isFalse();
        assertThat(sight.fromMillis(now)).isZero();
    }
}
