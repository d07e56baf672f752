package brightseam.lineplan;

import brightseam.kernel.Moment;
import brightseam.planner.Action;
import brightseam.planner.Basket;
import brightseam.planner.LineProblem;
import brightseam.planner.Plan;
import brightseam.planner.PlannedStage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** An earlier plan told in the seconds and stage numbers of a later problem, for the planner to start from. */
public final class CarriedPlan {

    private final LineProblem problem;
    private final int laterSeconds;

    private CarriedPlan(LineProblem problem, int laterSeconds) {
        this.problem = problem;
        this.laterSeconds = laterSeconds;
    }

    /** What of {@code standing} is still ahead in {@code later}; empty where there was no plan. */
    public static Optional<Plan> into(LineSituation later, PlanStanding standing) {
        Moment then = standing.situation().at();
        CarriedPlan carried = new CarriedPlan(later.problem(), (int) later.at().since(then).toSeconds());
        return standing.plan().map(carried::plan);
    }

    private Plan plan(Plan earlier) {
        List<PlannedStage> stages = new ArrayList<>();
        List<Action> actions = new ArrayList<>();
        for (PlannedStage stage : earlier.stages()) {
            number(stage).ifPresent(number -> stages.add(new PlannedStage(stage.basket(), number, stage.step(),
                    stage.station(), stage.startSeconds() - laterSeconds, stage.endSeconds() - laterSeconds)));
        }
        for (Action action : earlier.actions()) {
            earlier.stage(action.basket(), action.stage()).map(this::number).filter(OptionalInt::isPresent)
                    .ifPresent(number -> actions.add(new Action(action.person(), action.basket(), action.kind(),
                            number.getAsInt(), action.from(), action.to(), action.startSeconds() - laterSeconds,
                            action.endSeconds() - laterSeconds)));
        }
        return new Plan(stages, actions, Set.of());
    }

    private OptionalInt number(PlannedStage stage) {
        Optional<Basket> basket = problem.baskets().stream()
                .filter(one -> one.label().equals(stage.basket())).findFirst();
        if (basket.isPresent()) {
            for (int i = 0; i <= basket.get().last(); i++) {
                if (basket.get().stages().get(i).step().equals(stage.step())) {
                    return OptionalInt.of(i);
                }
            }
        }
        return OptionalInt.empty();
    }
}
