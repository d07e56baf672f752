package brightseam.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brightseam.kernel.SupplyId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ArgonForecastTest {

    private static final Instant EIGHT = Instant.parse("2031-03-04T08:00:00Z");

    private static ArgonLeft gas(String id, boolean connected, double usable) {
        return new ArgonLeft(new SupplyId(id), false, connected, usable + 500, 500, 0);
    }

    private static ArgonLeft liquid(String id, boolean connected, double usable, double boilOff) {
        return new ArgonLeft(new SupplyId(id), true, connected, usable + 500, 500, boilOff);
    }

    private static ArgonDemand demand(double startsInHours, double purge, double hold) {
        return new ArgonDemand(Optional.empty(), Optional.empty(),
                EIGHT.plusMillis(Math.round(startsInHours * 3_600_000)),
                new ArgonNeed.Needed(Duration.ofHours(2), Duration.ofHours(3), purge, hold, 0));
    }

    private static ArgonForecast forecast(List<ArgonLeft> sources, ArgonDemand... demands) {
        return ArgonForecast.of(sources, List.of(demands), EIGHT);
    }

    @Test
    void what_lasts_needs_no_change_over() {
        ArgonForecast forecast = forecast(List.of(gas("G-1", true, 10_000)), demand(1, 6_000, 1_500));
        assertThat(forecast.changeOverAt()).isEmpty();
        assertThat(forecast.runsOutAt()).isEmpty();
        assertThat(forecast.leftStandardLitres()).isCloseTo(2_500, within(1e-6));
        assertThat(forecast.lines().getFirst().to()).isEqualTo(EIGHT.plus(Duration.ofHours(6)));
        assertThat(forecast.sessionsLeft()).isEqualTo(1);
    }

    /** 3000 L an hour for two hours from nine: the 4500 L are gone at half past ten. */
    @Test
    void the_change_over_comes_when_the_connected_source_is_at_its_rest() {
        ArgonForecast forecast = forecast(
                List.of(gas("G-2", false, 20_000), gas("G-1", true, 4_500)), demand(1, 6_000, 1_500));
        assertThat(forecast.changeOverAt()).contains(EIGHT.plus(Duration.ofMinutes(150)));
        assertThat(forecast.lines().getFirst().changeOvers()).containsExactly(
                new ArgonForecast.ChangeOver(EIGHT.plus(Duration.ofMinutes(150)), new SupplyId("G-2")));
        assertThat(forecast.runsOutAt()).isEmpty();
        assertThat(forecast.leftStandardLitres()).isCloseTo(17_000, within(1e-3));
    }

    @Test
    void a_second_connected_source_follows_without_a_hand() {
        ArgonForecast forecast = forecast(
                List.of(gas("G-1", true, 4_500), gas("G-2", true, 20_000)), demand(1, 6_000, 1_500));
        assertThat(forecast.changeOverAt()).isEmpty();
        assertThat(forecast.lines().getFirst().changeOvers()).isEmpty();
    }

    @Test
    void what_cannot_be_finished_says_when_it_runs_out_and_what_is_missing() {
        ArgonForecast forecast = forecast(List.of(gas("G-1", true, 7_000)), demand(0, 6_000, 1_500),
                demand(24, 6_000, 1_500));
        assertThat(forecast.lines().getFirst().shortStandardLitres()).isCloseTo(500, within(1e-3));
        assertThat(forecast.lines().getLast().shortStandardLitres()).isCloseTo(7_500, within(1e-3));
        assertThat(forecast.runsOutAt()).contains(EIGHT.plus(Duration.ofHours(4)));
        assertThat(forecast.sessionsLeft()).isZero();
    }

    @Test
    void a_session_waits_for_the_one_before_it() {
        ArgonForecast forecast = forecast(
                List.of(gas("G-1", true, 90_000)), demand(3, 6_000, 1_500), demand(0, 6_000, 1_500));
        assertThat(forecast.lines()).extracting(ArgonForecast.Line::from)
                .containsExactly(EIGHT, EIGHT.plus(Duration.ofHours(5)));
    }

    @Test
    void a_dewar_boils_off_while_it_stands_and_not_on_top_of_what_is_drawn() {
        ArgonForecast idle = forecast(List.of(liquid("G-1", true, 50_000, 100)), demand(24, 6_000, 1_500));
        assertThat(idle.leftStandardLitres()).isCloseTo(50_000 - 24 * 100 - 7_500, within(1e-3));
        ArgonForecast beside = forecast(
                List.of(gas("G-1", true, 50_000), liquid("G-2", true, 50_000, 100)), demand(0, 6_000, 1_500));
        assertThat(beside.leftStandardLitres()).isCloseTo(100_000 - 7_500 - 5 * 100, within(1e-3));
    }

    @Test
    void a_flow_below_the_boil_off_lasts_no_longer_than_the_boil_off() {
        assertThat(ArgonForecast.lasts(List.of(liquid("G-1", true, 1_000, 100)), 10)).hasHours(10);
        assertThat(ArgonForecast.lasts(List.of(gas("G-1", true, 1_000), gas("G-2", true, 500)), 100)).hasHours(15);
        assertThat(ArgonForecast.lasts(List.of(), 100)).isZero();
    }

    /** No gas is made or lost: what was there is drawn, boiled off or left. */
    @Test
    void gas_is_neither_made_nor_lost() {
        Random dice = new Random(20310304);
        for (int run = 0; run < 300; run++) {
            List<ArgonLeft> sources = new ArrayList<>();
            double before = 0;
            for (int i = 0; i <= dice.nextInt(4); i++) {
                sources.add(gas("G-" + i, dice.nextBoolean(), dice.nextInt(20_000)));
                before += sources.getLast().usableStandardLitres();
            }
            List<ArgonDemand> demands = new ArrayList<>();
            double asked = 0;
            for (int i = 0; i <= dice.nextInt(5); i++) {
                demands.add(demand(dice.nextInt(72), 1 + dice.nextInt(9_000), dice.nextInt(2_000)));
                asked += demands.getLast().need().standardLitres();
            }
            ArgonForecast forecast = ArgonForecast.of(sources, demands, EIGHT);
            double lacking = forecast.lines().stream().mapToDouble(ArgonForecast.Line::shortStandardLitres).sum();
            assertThat(forecast.leftStandardLitres()).as("run %d", run)
                    .isCloseTo(before - (asked - lacking), within(1.0));
            assertThat(forecast.runsOutAt().isPresent()).isEqualTo(lacking > 0);
        }
    }
}
