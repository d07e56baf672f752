package brightseam.ui.chamber;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.session.MeterFact;
import brightseam.session.Phase;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StripWriterTest {

    private static final Moment NOW = new Moment(Instant.parse("2031-10-14T08:00:00Z"), 10_000_000);

    @ParameterizedTest
    @EnumSource(Phase.class)
    void one_phase_is_now_and_what_lies_before_it_is_done(Phase phase) {
        List<Strip.Stop> stops = StripWriter.stops(phase);
        long now = stops.stream().filter(stop -> stop.standing() == Strip.Standing.NOW
                || stop.standing() == Strip.Standing.TROUBLE).count();
        assertThat(now).isEqualTo(1);
        int at = stops.indexOf(stops.stream().filter(stop -> stop.standing() == Strip.Standing.NOW
                || stop.standing() == Strip.Standing.TROUBLE).findFirst().orElseThrow());
        assertThat(stops.subList(0, at)).allMatch(stop -> stop.standing() == Strip.Standing.DONE);
        assertThat(stops.subList(at + 1, stops.size())).allMatch(stop -> stop.standing() == Strip.Standing.TO_COME);
    }

    @Test
    void not_fit_and_given_up_are_told_by_word_and_shape() {
        assertThat(StripWriter.stops(Phase.UNFIT)).contains(new Strip.Stop("Not fit", Strip.Standing.TROUBLE));
        assertThat(StripWriter.stops(Phase.ABANDONED)).contains(new Strip.Stop("Given up", Strip.Standing.TROUBLE));
    }

    @Test
    void a_reading_stands_within_or_above_its_limit() {
        assertThat(gauge("40.0", Phase.FIT)).isEqualTo(new Gauge("Oxygen", "40.0", "ppm", "limit 40\u00a0ppm",
                Gauge.State.IN_ORDER, "within"));
        assertThat(gauge("40.1", Phase.FIT).state()).isEqualTo(Gauge.State.ABOVE);
        assertThat(gauge("40.1", Phase.FIT).word()).isEqualTo("above");
    }

    @Test
    void a_meter_that_cannot_be_relied_on_leaves_the_oxygen_unknown_by_name() {
        assertThat(gauge("24", Phase.FIT, "silent").state()).isEqualTo(Gauge.State.UNKNOWN);
        assertThat(gauge("24", Phase.FIT, "silent").word()).isEqualTo("silent");
        assertThat(StripWriter.gauge("Oxygen", Optional.empty(), Optional.of(BigDecimal.TEN), Phase.FIT).word())
                .isEqualTo("not registered");
    }

    @Test
    void that_a_meter_for_argon_cannot_measure_air_is_no_trouble_before_the_purge() {
        assertThat(gauge("209000", Phase.CHECK_IN, "out-of-range").state()).isEqualTo(Gauge.State.PLAIN);
        assertThat(gauge("209000", Phase.CHECK_IN, "out-of-range").value()).isEqualTo("20.9");
        assertThat(gauge("209000", Phase.PURGING, "out-of-range").state()).isEqualTo(Gauge.State.UNKNOWN);
        assertThat(gauge("209000", Phase.CHECK_IN, "uncalibrated").state()).isEqualTo(Gauge.State.UNKNOWN);
    }

    private static Gauge gauge(String value, Phase phase, String... troubles) {
        return StripWriter.gauge("Oxygen", Optional.of(new MeterFact(new SupplyId("G-0501"),
                Optional.of(new BigDecimal(value)), Optional.of(NOW), Arrays.asList(troubles), false)),
                Optional.of(new BigDecimal("40")), phase);
    }
}
