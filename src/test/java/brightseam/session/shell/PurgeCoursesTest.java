package brightseam.session.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.device.Reading;
import brightseam.device.Quality;
import brightseam.device.Series;
import brightseam.kernel.Moment;
import brightseam.purge.PurgeRun.FlowStep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PurgeCoursesTest {

    private static final Moment START = new Moment(Instant.parse("2031-03-04T08:00:00Z"), 1_000_000);

    @Test
    void a_measured_flow_becomes_the_means_of_half_minutes() {
        List<Reading> readings = new ArrayList<>();
        for (int second = 0; second < 90; second++) {
            double litres = second < 30 ? 40 : second < 60 ? 20 + second % 2 : 10;
            readings.add(new Reading(START.elapsedMillis() + second * 1000L, litres, Quality.of(0)));
        }
        assertThat(PurgeCourses.steps(Series.of(readings), START)).containsExactly(
                new FlowStep(0, 40), new FlowStep(30, 20.5), new FlowStep(60, 10));
    }

    @Test
    void a_flow_meter_below_its_zero_is_no_flow() {
        Reading below = new Reading(START.elapsedMillis() + 1000, -0.2, Quality.of(0));
        assertThat(PurgeCourses.steps(Series.of(List.of(below)), START)).containsExactly(new FlowStep(0, 0));
    }
}
