package brightseam.ui.chamber;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.chart.ChartFit;
import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.purge.LevelCause;
import brightseam.purge.MeasuredCurve;
import brightseam.purge.MeterTraits;
import brightseam.purge.PurgeOutlook;
import brightseam.purge.PurgeRun;
import brightseam.session.PurgeCourse;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Curves of a well mixed volume with noise: what the screen says of them. */
class PurgeWordsTest {

    private static final double LITRES = 1150;
    private static final double FLOW = 120;
    private static final double AIR_PPM = 209_460;
    private static final Moment START = new Moment(Instant.parse("2031-10-14T13:41:00Z"), 5_000_000);

    @Test
    void a_tight_chamber_is_told_when_it_will_be_fit_with_a_band_round_it() {
        // Reaches 30 ppm where LITRES / FLOW * ln(AIR / (30 - 2)) minutes have gone: 85.5.
        PurgeOutlook outlook = outlook(2, 70);
        assertThat(outlook).isInstanceOf(PurgeOutlook.OnCourse.class);
        assertThat(words(outlook, 70)).matches("Fit at 15:0\\d \\(1[45]:\\d\\d to 15:\\d\\d\\), in 1\\d min");
        ChartFit fit = PurgeWords.fit(outlook, START).orElseThrow();
        long minute = (fit.arrival().orElseThrow().atMillis() - START.elapsedMillis()) / 60_000;
        assertThat(minute).isBetween(83L, 88L);
        assertThat(fit.arrival().orElseThrow().earliestMillis()).isLessThan(fit.arrival().orElseThrow().latestMillis());
        assertThat(PurgeWords.level(course(outlook, Optional.empty(), Optional.empty()))).isEmpty();
    }

    @Test
    void a_curve_that_flattens_is_called_a_leak_or_impure_argon_with_how_much() {
        // 62 ppm at 120 L/min is a leak of 120 * (62 - 2) / 209 460 = 0.034 L/min of air.
        PurgeOutlook outlook = outlook(62, 110);
        assertThat(outlook).isInstanceOf(PurgeOutlook.LevelsOff.class);
        assertThat(PurgeWords.level(course(outlook, Optional.empty(), Optional.empty())).orElseThrow())
                .matches("Levels off at about 6\\d\\.\\d.ppm: as much as a leak of 3\\d.mL/min of air, or argon with"
                        + " 6\\d\\.\\d.ppm\\. Look for a glove, .*");
        assertThat(words(outlook, 110)).contains("will not get there");
    }

    @Test
    void what_keeps_the_oxygen_up_is_told_where_the_moisture_tells_it() {
        PurgeOutlook level = outlook(62, 110);
        assertThat(PurgeWords.level(course(level, Optional.of(outlook(20, 110)), Optional.of(LevelCause.AIR_LEAK))))
                .hasValueSatisfying(words -> assertThat(words).endsWith("that fits a leak."));
        assertThat(PurgeWords.level(course(outlook(2, 110), Optional.of(level), Optional.empty())))
                .hasValueSatisfying(words -> assertThat(words).matches("Moisture levels off at about 6.*off\\."));
    }

    @Test
    void early_it_says_that_it_is_early() {
        assertThat(words(PurgeOutlook.of(PurgeRun.steady(LITRES, FLOW, 2), MeterTraits.of(0.1, 10),
                MeasuredCurve.of(new double[] {0, 1}, new double[] {AIR_PPM, AIR_PPM}), 30, Optional.empty()), 0))
                .isEqualTo("Too early to say: readings are few so far.");
    }

    private static PurgeCourse course(PurgeOutlook oxygen, Optional<PurgeOutlook> moisture,
            Optional<LevelCause> cause) {
        return new PurgeCourse(new SupplyId("G-0501"), START, new BigDecimal("30"), oxygen, moisture, cause);
    }

    private static String words(PurgeOutlook outlook, int minutes) {
        return PurgeWords.forecast(outlook, START, START.plus(Duration.ofMinutes(minutes)), ZoneOffset.UTC);
    }

    private static PurgeOutlook outlook(double level, int minutes) {
        Random noise = new Random(11);
        int count = minutes * 6;
        double[] seconds = new double[count];
        double[] ppm = new double[count];
        for (int i = 0; i < count; i++) {
            seconds[i] = i * 10;
            double value = level + (AIR_PPM - level) * Math.exp(-FLOW / LITRES * seconds[i] / 60);
            ppm[i] = value * (1 + 0.004 * noise.nextGaussian()) + 0.1 * noise.nextGaussian();
        }
        return PurgeOutlook.of(PurgeRun.steady(LITRES, FLOW, 2), MeterTraits.of(0.1, 0),
                MeasuredCurve.of(seconds, ppm), 30, Optional.empty());
    }
}
