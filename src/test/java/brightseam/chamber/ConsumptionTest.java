package brightseam.chamber;

import static brightseam.chamber.Gear.at;
import static brightseam.chamber.Gear.decimal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brightseam.kernel.SessionId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ConsumptionTest {

    private static final double TO_STANDARD = 288.15 / 293.15;

    private static long[] everySecond(int seconds) {
        long[] millis = new long[seconds + 1];
        for (int i = 0; i <= seconds; i++) {
            millis[i] = 1000L * i;
        }
        return millis;
    }

    private static double[] steady(int count, double value) {
        double[] values = new double[count];
        java.util.Arrays.fill(values, value);
        return values;
    }

    @Test
    void a_steady_flow_is_flow_times_time() {
        Consumption.Flowed flowed =
                Consumption.byFlow(everySecond(600), steady(601, 60), 0, 600_000, 20, 5_000);
        assertThat(flowed.standardLitres()).isCloseTo(600 * TO_STANDARD, within(0.2));
        assertThat(flowed.provenMillis()).isEqualTo(600_000);
        assertThat(flowed.unprovenMillis()).isZero();
    }

    @Test
    void a_ramp_is_its_triangle_and_parts_of_it_add_up() {
        long[] millis = {0, 60_000};
        double[] ramp = {0, 60};
        double whole = Consumption.byFlow(millis, ramp, 0, 60_000, 15, 60_000).standardLitres();
        double first = Consumption.byFlow(millis, ramp, 0, 20_000, 15, 60_000).standardLitres();
        double rest = Consumption.byFlow(millis, ramp, 20_000, 60_000, 15, 60_000).standardLitres();
        assertThat(whole).isCloseTo(30, within(1e-9));
        assertThat(first + rest).isCloseTo(whole, within(1e-9));
    }

    @Test
    void nothing_is_counted_where_no_meter_told_it() {
        long[] millis = {0, 1_000, 61_000, 62_000};
        Consumption.Flowed flowed = Consumption.byFlow(millis, steady(4, 60), 0, 70_000, 15, 5_000);
        assertThat(flowed.standardLitres()).isCloseTo(2, within(1e-9));
        assertThat(flowed.unprovenMillis()).isEqualTo(68_000);
        assertThat(Consumption.byFlow(new long[0], new double[0], 0, 70_000, 15, 5_000).unprovenMillis())
                .isEqualTo(70_000);
    }

    @Test
    void what_left_a_source_is_what_it_held_before_less_what_it_holds_now() {
        ArgonVessel vessel = Gear.bundle("1").vessel();
        ArgonReading before = ArgonReading.pressure(at(0), decimal("180"), decimal("15"));
        ArgonReading after = ArgonReading.pressure(at(60), decimal("140"), decimal("15"));
        double used = Consumption.byContent(vessel, before, after);
        assertThat(used).isCloseTo(Consumption.contentStandardLitres(vessel, before)
                - Consumption.contentStandardLitres(vessel, after), within(1e-9));
        assertThat(used / 600).isBetween(40.0, 45.0);
        ArgonReading warm = ArgonReading.pressure(at(60), decimal("180"), decimal("30"));
        assertThat(Consumption.byContent(vessel, before, warm)).isPositive();
    }

    @Test
    void the_report_says_how_far_the_forecast_was_off() {
        ConsumptionReport report = new ConsumptionReport(new SessionId("CS-0012"), decimal("8000"),
                Optional.of(decimal("8600")), Optional.of(decimal("8500")), 0, List.of());
        assertThat(report.usedStandardLitres()).contains(decimal("8600"));
        assertThat(report.differencePercent()).contains(decimal("7.5"));
        assertThat(report.disagreementPercent()).contains(decimal("1.2"));
        ConsumptionReport unknown = new ConsumptionReport(new SessionId("CS-0012"), decimal("8000"),
                Optional.empty(), Optional.empty(), 0, List.of());
        assertThat(unknown.differencePercent()).isEmpty();
    }
}
