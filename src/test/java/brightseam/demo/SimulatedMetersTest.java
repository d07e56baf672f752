package brightseam.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brightseam.browser.ShopServer;
import brightseam.chamber.shell.Chambers;
import brightseam.device.MeterNow;
import brightseam.device.Quality;
import brightseam.device.Reading;
import brightseam.device.Series;
import brightseam.device.Trouble;
import brightseam.device.shell.Meters;
import brightseam.device.shell.Readings;
import brightseam.kernel.Moment;
import brightseam.kernel.shell.DemoClock;
import java.time.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SimulatedMetersTest {

    private static final double AIR_PPM = 209_460;

    private static ShopServer shop;

    @BeforeAll
    static void open_a_shop_with_nothing_going_on() {
        shop = ShopServer.demo("--brightseam.demo-past=false");
    }

    @AfterAll
    static void close_it() {
        shop.close();
    }

    @AfterEach
    void everything_works_again() {
        trouble().mendAll();
        skip(Duration.ofMinutes(1));
    }

    @Test
    void every_meter_in_use_is_simulated_says_so_and_shows_air_in_an_open_chamber() {
        assertThat(shop.bean(Meters.class).all()).hasSize(DemoMeter.values().length)
                .allMatch(record -> record.meter().isSimulated());
        skip(Duration.ofMinutes(5));
        MeterNow oxygen = now(DemoMeter.CHAMBER_OXYGEN);
        Reading last = oxygen.last().orElseThrow();
        assertThat(oxygen.simulated()).isTrue();
        assertThat(oxygen.isUsable()).isTrue();
        assertThat(last.quality()).containsExactly(Quality.SIMULATED);
        assertThat(last.value()).isCloseTo(AIR_PPM, within(AIR_PPM / 40));
        assertThat(now(DemoMeter.ROOM_OXYGEN).last().orElseThrow().value()).isCloseTo(20.9, within(0.3));
        assertThat(now(DemoMeter.PRESSURE).last().orElseThrow().value()).isCloseTo(148, within(1.0));
        assertThat(now(DemoMeter.FLOW).last().orElseThrow().value()).isCloseTo(0, within(1.5));
    }

    @Test
    void a_meter_that_is_out_of_use_is_not_heard() {
        assertThat(now(DemoMeter.SPARE_OXYGEN).troubles()).contains(Trouble.NEVER_HEARD, Trouble.UNCALIBRATED);
    }

    @Test
    void what_is_connected_and_what_the_chamber_is_made_of_are_in_the_register() {
        var chamber = shop.bean(Chambers.class).find(DemoChamber.STATION).orElseThrow().state();
        assertThat(chamber.connected()).containsExactly(DemoArgon.BUNDLE.label());
        assertThat(chamber.terms()).isEqualTo(DemoChamber.terms());
    }

    @Test
    void a_skipped_clock_brings_the_readings_of_what_was_skipped() {
        Moment before = shop.bean(DemoClock.class).now();
        skip(Duration.ofHours(1));
        Moment after = shop.bean(DemoClock.class).now();
        Series series = shop.bean(Readings.class).series(
                DemoMeter.CHAMBER_OXYGEN.label(), before.elapsedMillis(), after.elapsedMillis());
        assertThat(series.size()).isGreaterThan(150);
        assertThat(now(DemoMeter.CHAMBER_OXYGEN).age()).isLessThan(Duration.ofSeconds(3));
    }

    @Test
    void trouble_shows_as_what_it_is() {
        skip(Duration.ofMinutes(2));
        trouble().freeze(ChamberTrouble.OXYGEN);
        skip(Duration.ofMinutes(5));
        assertThat(now(DemoMeter.CHAMBER_OXYGEN).troubles()).contains(Trouble.FROZEN);
        trouble().mend(ChamberTrouble.OXYGEN);
        skip(Duration.ofMinutes(1));
        assertThat(now(DemoMeter.CHAMBER_OXYGEN).troubles()).isEmpty();
        trouble().silence(ChamberTrouble.OXYGEN);
        skip(Duration.ofMinutes(1));
        assertThat(now(DemoMeter.CHAMBER_OXYGEN).troubles()).containsExactly(Trouble.SILENT);
    }

    private static ChamberTrouble trouble() {
        return shop.bean(ChamberTrouble.class);
    }

    private static void skip(Duration duration) {
        shop.bean(DemoClock.class).skip(duration);
    }

    private static MeterNow now(DemoMeter meter) {
        return shop.bean(Readings.class).now(meter.label());
    }
}
