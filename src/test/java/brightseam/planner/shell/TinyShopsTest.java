package brightseam.planner.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.planner.Answer;
import brightseam.planner.Basket;
import brightseam.planner.BruteForce;
import brightseam.planner.Goal;
import brightseam.planner.Hands;
import brightseam.planner.LineProblem;
import brightseam.planner.Progress;
import brightseam.planner.Session;
import brightseam.planner.Shift;
import brightseam.planner.Stage;
import brightseam.planner.Tank;
import brightseam.planner.Walking;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Shops so small that every plan can be tried: what the solver proves is what trying all finds. */
class TinyShopsTest {

    private static final int SHOPS = Integer.getInteger("shops", 30);
    private static final int SLACK_SECONDS = 3;
    private static final StationId DOOR = new StationId("DOOR");
    private static final KitId KIT = new KitId("K-1");

    @Test
    void the_solver_proves_what_trying_every_plan_finds() {
        PlanSolver solver = new PlanSolver(SolverSettings.within(Duration.ofSeconds(5)));
        int impossible = 0;
        int possible = 0;
        for (long seed = 1; seed <= SHOPS; seed++) {
            LineProblem problem = shop(new Random(seed));
            Optional<Long> best = BruteForce.best(problem, SLACK_SECONDS);
            Answer answer = solver.solve(problem);
            if (best.isEmpty()) {
                impossible++;
                assertThat(answer).as("shop %d", seed).isInstanceOf(Answer.Impossible.class);
            } else {
                possible++;
                assertThat(answer).as("shop %d", seed).isInstanceOfSatisfying(Answer.Planned.class, planned -> {
                    assertThat(planned.quality().measure()).isEqualTo(best.get());
                    assertThat(planned.quality().isProven()).isTrue();
                });
            }
        }
        assertThat(impossible).as("shops without a plan").isGreaterThan(SHOPS / 10);
        assertThat(possible).as("shops with one").isGreaterThan(SHOPS / 4);
    }

    /** Every hold has a maximum at most the slack above its minimum, so that trying the slack is trying all. */
    private static LineProblem shop(Random random) {
        List<StationId> places = List.of(new StationId("A"), new StationId("B"));
        Walking walking = Walking.along(
                Map.of(DOOR, 0.0, places.get(0), 1.0, places.get(1), 1.0 + random.nextInt(3)), 1);
        List<Stage> stages = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            int min = random.nextInt(4);
            List<StationId> tank = List.of(places.get(random.nextInt(4) == 0 ? 1 - i : i));
            Stage stage = Stage.of(new StepId("step-" + i), tank, min)
                    .upTo(min + random.nextInt(SLACK_SECONDS + 1)).handled(random.nextInt(2), random.nextInt(2), 0);
            stages.add(random.nextInt(3) == 0 ? stage.attended() : stage);
        }
        if (random.nextInt(3) == 0) {
            stages.set(0, stages.get(0).withGapMax(OptionalInt.of(2 + random.nextInt(3))));
        }
        int day = 9 + random.nextInt(8);
        List<Hands> hands = new ArrayList<>();
        hands.add(new Hands(new BadgeId("P-1"), List.of(new Shift(0, day)), Optional.of(DOOR)));
        if (random.nextInt(4) == 0) {
            hands.add(new Hands(new BadgeId("P-2"), List.of(new Shift(random.nextInt(4), day)), Optional.empty()));
        }
        List<Basket> baskets = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            baskets.add(new Basket("B-" + i, random.nextBoolean() ? Optional.of(KIT) : Optional.empty(),
                    Progress.waitingAt(DOOR), random.nextInt(2), stages, Optional.empty()));
        }
        Goal goal = switch (random.nextInt(3)) {
            case 0 -> new Goal.ForSessions();
            case 1 -> new Goal.Soonest();
            default -> new Goal.ReadyBy(4 + random.nextInt(8));
        };
        return new LineProblem(List.of(new Tank(places.get(0), 1, false), new Tank(places.get(1), 1 + random.nextInt(2),
                false)), hands, walking, baskets, List.of(new Session(KIT, day - 2 - random.nextInt(3), 0, 0)), goal);
    }
}
