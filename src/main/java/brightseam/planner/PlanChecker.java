package brightseam.planner;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Holds a plan against the rules of the line. Written from the rules: it uses nothing of what makes plans, and no plan
 * is shown that it finds fault with.
 */
public final class PlanChecker {

    private PlanChecker() {}

    /** Everything wrong with {@code plan}; empty where it can be worked as it stands. */
    public static List<Violation> check(LineProblem problem, Plan plan) {
        List<Violation> found = new ArrayList<>();
        Set<String> known = new HashSet<>();
        for (Basket basket : problem.baskets()) {
            known.add(basket.label());
            List<PlannedStage> stages = new ArrayList<>();
            plan.stages().stream().filter(stage -> stage.basket().equals(basket.label())).forEach(stages::add);
            List<Action> actions = plan.actions().stream()
                    .filter(action -> action.basket().equals(basket.label())).toList();
            if (plan.leftOut().contains(basket.label())) {
                leftOut(problem, basket, stages, actions, found);
            } else if (complete(basket, stages, found)) {
                new BasketRules(problem, basket, inOrder(stages), found).check();
                new HandlingRules(problem, basket, inOrder(stages), actions, found).check();
            }
        }
        plan.stages().stream().filter(stage -> !known.contains(stage.basket()))
                .forEach(stage -> found.add(new Violation.NotAskedFor(stage.basket(), stage.number())));
        plan.actions().stream().filter(action -> !known.contains(action.basket()))
                .forEach(action -> found.add(new Violation.NotAskedFor(action.basket(), action.stage())));
        found.addAll(PersonRules.check(problem, plan));
        found.addAll(RoomRules.check(problem, plan));
        return List.copyOf(found);
    }

    private static void leftOut(LineProblem problem, Basket basket, List<PlannedStage> stages, List<Action> actions,
            List<Violation> found) {
        if (!problem.mayLeaveOut(basket)) {
            found.add(new Violation.LeftOut(basket.label()));
        }
        stages.forEach(stage -> found.add(new Violation.NotAskedFor(basket.label(), stage.number())));
        actions.forEach(action -> found.add(new Violation.NotAskedFor(basket.label(), action.stage())));
    }

    private static boolean complete(Basket basket, List<PlannedStage> stages, List<Violation> found) {
        Map<Integer, Integer> times = new HashMap<>();
        stages.forEach(stage -> times.merge(stage.number(), 1, Integer::sum));
        int before = found.size();
        for (int number = 0; number <= basket.last(); number++) {
            if (!times.containsKey(number)) {
                found.add(new Violation.StageMissing(basket.label(), basket.stages().get(number).step()));
            }
        }
        times.forEach((number, count) -> {
            if (count > 1 || number < 0 || number > basket.last()) {
                found.add(new Violation.NotAskedFor(basket.label(), number));
            }
        });
        return found.size() == before;
    }

    private static List<PlannedStage> inOrder(List<PlannedStage> stages) {
        return stages.stream().sorted((a, b) -> Integer.compare(a.number(), b.number())).toList();
    }
}
