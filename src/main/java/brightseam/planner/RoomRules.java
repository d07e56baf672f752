package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The rule for tanks: never more baskets than there is room for, from the start of lowering to the last drip. */
final class RoomRules {

    /** A basket comes or goes. */
    private record Change(int seconds, boolean comes, String basket) {}

    private RoomRules() {}

    static List<Violation> check(LineProblem problem, Plan plan) {
        Map<String, Basket> baskets = new HashMap<>();
        problem.baskets().forEach(basket -> baskets.put(basket.label(), basket));
        Map<StationId, List<Change>> changes = new HashMap<>();
        for (PlannedStage stage : plan.stages()) {
            Basket basket = baskets.get(stage.basket());
            if (basket != null && stage.number() >= 0 && stage.number() <= basket.last()) {
                Stage rule = basket.stages().get(stage.number());
                List<Change> here = changes.computeIfAbsent(stage.station(), id -> new ArrayList<>());
                int in = stage.startSeconds() - rule.lowerSeconds();
                int out = stage.endSeconds() + rule.liftSeconds() + rule.dripSeconds();
                if (out > in) {
                    here.add(new Change(in, true, stage.basket() + " " + stage.number()));
                    here.add(new Change(out, false, stage.basket() + " " + stage.number()));
                }
            }
        }
        List<Violation> found = new ArrayList<>();
        for (Tank tank : problem.tanks()) {
            fill(tank, changes.getOrDefault(tank.id(), List.of()), found);
        }
        return found;
    }

    private static void fill(Tank tank, List<Change> changes, List<Violation> found) {
        Set<String> inside = new TreeSet<>();
        List<Change> inOrder = changes.stream()
                .sorted(Comparator.comparingInt(Change::seconds).thenComparing(Change::comes)).toList();
        for (Change change : inOrder) {
            if (change.comes()) {
                inside.add(change.basket());
                if (inside.size() > tank.capacityBaskets()) {
                    found.add(new Violation.TankOverfull(
                            tank.id(), change.seconds(), Set.copyOf(inside), tank.capacityBaskets()));
                }
            } else {
                inside.remove(change.basket());
            }
        }
    }
}
