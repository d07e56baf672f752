package brightseam.planner.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.planner.Basket;
import brightseam.planner.Goal;
import brightseam.planner.Hands;
import brightseam.planner.LineProblem;
import brightseam.planner.Plan;
import brightseam.planner.PlanChecker;
import brightseam.planner.Progress;
import brightseam.planner.Schedule;
import brightseam.planner.Shift;
import brightseam.planner.Stage;
import brightseam.planner.Tank;
import brightseam.planner.Walking;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The line of L. W. Phillips and P. S. Unger, "Mathematical programming solution of a hoist scheduling program", AIIE
 * Transactions 8(2), 1976, 219-225: 12 tanks, one hoist, one carrier in each cycle. The published optimum is 521 s.
 */
class CyclicLineTest {

    private static final int OPTIMUM_SECONDS = 521;
    private static final int NONE = -1;
    private static final int[] SOAK_MIN = {150, 90, 120, 90, 30, 60, 60, 45, 130, 120, 90, 30};
    private static final int[] SOAK_MAX = {200, 120, 180, 125, 40, 120, 120, 75, NONE, NONE, 120, 60};
    /** Move i goes from station i to i + 1, the last one back to 0. */
    private static final int[] MOVES = {31, 22, 22, 22, 25, 23, 22, 22, 22, 47, 27, 22, 30};
    /** From station, row by row 0 to 12, to station, column by column 0 to 12, without a carrier. */
    private static final int[][] EMPTY = {
        {0, 11, 14, 16, 14, 19, 22, 24, 26, 29, 6, 8, 10},
        {11, 0, 2, 5, 2, 8, 10, 13, 15, 17, 10, 3, 1},
        {14, 2, 0, 2, 0, 5, 8, 10, 13, 15, 12, 6, 3},
        {16, 5, 2, 0, 2, 3, 5, 8, 10, 13, 15, 8, 6},
        {14, 2, 0, 2, 0, 5, 8, 10, 13, 15, 12, 6, 3},
        {19, 8, 5, 3, 5, 0, 3, 5, 7, 10, 18, 11, 9},
        {22, 10, 8, 5, 8, 3, 0, 2, 5, 7, 20, 14, 11},
        {24, 13, 10, 8, 10, 5, 2, 0, 2, 5, 23, 16, 14},
        {26, 15, 13, 10, 13, 7, 5, 2, 0, 2, 25, 19, 16},
        {29, 17, 15, 13, 15, 10, 7, 5, 2, 0, 27, 21, 19},
        {6, 10, 12, 15, 12, 18, 20, 23, 25, 27, 0, 7, 9},
        {8, 3, 6, 8, 6, 11, 14, 16, 19, 21, 7, 0, 2},
        {10, 1, 3, 6, 3, 9, 11, 14, 16, 19, 9, 2, 0}};
    private static final List<StationId> PLACES =
            IntStream.rangeClosed(0, 12).mapToObj(i -> new StationId("S-" + i)).toList();
    private static final Walking WALKING = Walking.table(PLACES, EMPTY);
    private static final BadgeId HOIST = new BadgeId("HOIST");
    private static final int CARRIERS = 8;

    private static final SolverSettings SETTINGS = SolverSettings.within(Duration.ofSeconds(20));

    private final Optional<CyclicLine.Round> round = CyclicLine.shortest(line(WALKING), SETTINGS);

    @Test
    void the_shortest_round_of_phillips_and_unger_takes_the_published_521_seconds_and_is_proven() {
        assertThat(round).hasValueSatisfying(found -> {
            assertThat(found.periodSeconds()).isEqualTo(OPTIMUM_SECONDS);
            assertThat(found.isProven()).isTrue();
        });
    }

    @Test
    void carriers_that_follow_one_another_in_that_round_pass_the_checker_of_the_shops_plans() {
        assertThat(PlanChecker.check(carriers(), unrolled(OPTIMUM_SECONDS))).isEmpty();
    }

    @Test
    void the_same_round_a_second_shorter_breaks_rules() {
        assertThat(PlanChecker.check(carriers(), unrolled(OPTIMUM_SECONDS - 1)))
                .isNotEmpty();
    }

    /** From 0 to 2 takes 14 s as published and 13 s over 1: the published optimum counts every way as published. */
    @Test
    void with_detours_that_the_published_ways_allow_the_round_would_be_shorter() {
        CyclicLine.Line line = line(WALKING.byShortestWays());
        assertThat(CyclicLine.shortest(line, SETTINGS)).hasValueSatisfying(
                found -> assertThat(found.periodSeconds()).isLessThan(OPTIMUM_SECONDS));
    }

    private static CyclicLine.Line line(Walking walking) {
        OptionalInt[] longest = Arrays.stream(SOAK_MAX)
                .mapToObj(most -> most == NONE ? OptionalInt.empty() : OptionalInt.of(most))
                .toArray(OptionalInt[]::new);
        return new CyclicLine.Line(PLACES.subList(1, 13), SOAK_MIN, longest, MOVES, PLACES.getFirst(), walking);
    }

    /** The same line as the shop's problem: what a move takes beyond its way is the lift. */
    private static LineProblem carriers() {
        List<Tank> tanks = new ArrayList<>();
        for (StationId place : PLACES) {
            tanks.add(new Tank(place, place.equals(PLACES.getFirst()) ? CARRIERS : 1, false));
        }
        List<Stage> stages = new ArrayList<>();
        stages.add(stage(0, 0, NONE));
        for (int tank = 1; tank <= 12; tank++) {
            stages.add(stage(tank, SOAK_MIN[tank - 1], SOAK_MAX[tank - 1]));
        }
        stages.add(Stage.of(new StepId("unload"), List.of(PLACES.getFirst()), 0));
        List<Basket> baskets = IntStream.range(0, CARRIERS).mapToObj(i -> new Basket("C-" + i, Optional.empty(),
                new Progress.InStage(PLACES.getFirst(), 0), 0, stages, Optional.empty())).toList();
        return new LineProblem(tanks,
                List.of(new Hands(HOIST, List.of(new Shift(0, 100_000)), Optional.empty())),
                WALKING, baskets, List.of(), new Goal.Soonest());
    }

    private static Stage stage(int station, int min, int max) {
        int lift = MOVES[station] - EMPTY[station][(station + 1) % 13];
        Stage stage = Stage.of(new StepId("soak-" + station), List.of(PLACES.get(station)), min).handled(0, lift, 0);
        return max == NONE ? stage : stage.upTo(max);
    }

    /** One carrier after another, each a period later than the one before, its moves where the round has them. */
    private Plan unrolled(int period) {
        int[] moves = round.orElseThrow().moveStartSeconds();
        List<Optional<Schedule.Way>> ways = new ArrayList<>();
        for (int carrier = 0; carrier < CARRIERS; carrier++) {
            int[] starts = new int[14];
            int[] ends = new int[14];
            int late = 0;
            for (int move = 0; move <= 12; move++) {
                if (move > 0 && moves[move] < moves[move - 1]) {
                    late++;
                }
                ends[move] = moves[move] + (carrier + late) * period;
                starts[move + 1] = ends[move] + MOVES[move];
            }
            ends[13] = starts[13];
            List<StationId> stations = new ArrayList<>(PLACES);
            stations.add(PLACES.getFirst());
            ways.add(Optional.of(new Schedule.Way(stations, starts, ends, Collections.nCopies(13, HOIST))));
        }
        return new Schedule(ways).toPlan(carriers());
    }
}
