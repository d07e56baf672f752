package brightseam.purge;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.purge.PurgeOutlook.LevelsOff;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LevelCauseTest {

    private static final RoomAir ROOM = RoomAir.WORKSHOP;

    @Test
    void the_ratio_of_room_air_is_a_leak_and_other_ratios_are_not() {
        double leak = 100 * ROOM.moisturePpm() / ROOM.oxygenPpm();
        assertThat(LevelCause.of(100, plusMinus(leak, 0.2), ROOM)).isEqualTo(LevelCause.AIR_LEAK);
        assertThat(LevelCause.of(100, plusMinus(60, 5), ROOM)).isEqualTo(LevelCause.WET_GAS_OR_SURFACES);
        assertThat(LevelCause.of(100, plusMinus(0.1, 0.2), ROOM)).isEqualTo(LevelCause.OXYGEN_IN_SUPPLY);
        assertThat(LevelCause.of(100, plusMinus(leak, 5), ROOM)).isEqualTo(LevelCause.CANNOT_TELL);
        assertThat(LevelCause.of(0, plusMinus(0, 0.1), ROOM)).isEqualTo(LevelCause.CANNOT_TELL);
        assertThat(LevelCause.of(0, plusMinus(20, 1), ROOM)).isEqualTo(LevelCause.WET_GAS_OR_SURFACES);
    }

    /** Both curves are simulated: a leak of moist air into an otherwise good purge, and wet gas without a leak. */
    @Test
    void two_measured_curves_tell_a_leak_from_wet_gas() {
        assertThat(cause(0.1, 3)).isEqualTo(LevelCause.AIR_LEAK);
        assertThat(cause(0.1, 90)).isEqualTo(LevelCause.WET_GAS_OR_SURFACES);
    }

    private static LevelCause cause(double leak, double supplyMoisture) {
        MeterTraits meter = MeterTraits.of(0.1, 0);
        SimulatedPurge oxygen = SimulatedPurge.plain(60, 0.9, leak).with(meter, 0.005, 0.1);
        LevelsOff oxygenLevel = (LevelsOff) oxygen.outlook(oxygen.shown(5400), 5400, 40, 1);
        MixingModel moisture = new MixingModel(400, 60, 2, 0.9, leak).forMoisture(supplyMoisture, ROOM);
        double[] seconds = new double[5401];
        double[] ppm = new double[5401];
        for (int i = 0; i < ppm.length; i++) {
            seconds[i] = i;
            ppm[i] = Math.round(moisture.ppmAfter(i / 60.0, ROOM.moisturePpm()) * 10) / 10.0;
        }
        PurgeRun run = new PurgeRun(400, List.of(new PurgeRun.FlowStep(0, 60)), 3, ROOM.moisturePpm());
        PurgeFit fit = PurgeFit.of(run, meter, MeasuredCurve.of(seconds, ppm), Optional.empty()).orElseThrow();
        Estimate level = fit.levelPpm();
        return LevelCause.of(oxygenLevel.levelPpm().value() - 2,
                new Estimate(level.value() - 3, level.low() - 3, level.high() - 3), ROOM);
    }

    private static Estimate plusMinus(double value, double doubt) {
        return new Estimate(value, value - doubt, value + doubt);
    }
}
