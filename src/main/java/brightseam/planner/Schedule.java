package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The decisions that make a plan, basket by basket: stations, holds and whose errand it is. All else follows.
 *
 * @param ways one entry for each basket of the problem, in its order; empty for one that is left out
 */
public record Schedule(List<Optional<Way>> ways) {

    /**
     * One basket's way.
     *
     * @param stations where each stage is done
     * @param starts when each hold begins
     * @param ends when each hold ends
     * @param persons whose hands do each errand
     */
    public record Way(List<StationId> stations, int[] starts, int[] ends, List<BadgeId> persons) {
        /** Copies the lists. */
        public Way {
            stations = List.copyOf(stations);
            persons = List.copyOf(persons);
        }
    }

    /** Copies the list. */
    public Schedule {
        ways = List.copyOf(ways);
    }

    /** The plan that follows. */
    public Plan toPlan(LineProblem problem) {
        List<PlannedStage> stages = new ArrayList<>();
        List<Action> actions = new ArrayList<>();
        Set<String> leftOut = new HashSet<>();
        for (int i = 0; i < ways.size(); i++) {
            Basket basket = problem.baskets().get(i);
            if (ways.get(i).isEmpty()) {
                leftOut.add(basket.label());
                continue;
            }
            Way way = ways.get(i).get();
            for (int number = 0; number <= basket.last(); number++) {
                stages.add(new PlannedStage(basket.label(), number, basket.stages().get(number).step(),
                        way.stations().get(number), way.starts()[number], way.ends()[number]));
            }
            for (Errand errand : Errand.of(basket)) {
                BadgeId person = way.persons().get(errand.number());
                errand.pieces().forEach(piece -> actions.add(action(problem, basket, way, person, piece)));
            }
        }
        return new Plan(stages, actions, leftOut);
    }

    /**
     * The decisions behind {@code plan}, carried over to {@code problem}: stages are known by basket and step, so the
     * plan may be of an earlier problem that more was before. A basket that the plan does not know to its end is left
     * out; a person who is not there any more is replaced by the first who is.
     */
    public static Schedule of(LineProblem problem, Plan plan) {
        List<Optional<Way>> ways = new ArrayList<>();
        for (Basket basket : problem.baskets()) {
            List<PlannedStage> stages = basket.stages().stream().flatMap(stage -> plan.stages().stream()
                    .filter(one -> one.basket().equals(basket.label()) && one.step().equals(stage.step()))).toList();
            ways.add(stages.size() == basket.stages().size() && !problem.hands().isEmpty()
                    ? Optional.of(way(problem, basket, stages, plan)) : Optional.empty());
        }
        return new Schedule(ways);
    }

    private static Way way(LineProblem problem, Basket basket, List<PlannedStage> stages, Plan plan) {
        int earlier = stages.getFirst().number();
        List<BadgeId> persons = new ArrayList<>();
        for (Errand errand : Errand.of(basket)) {
            persons.add(plan.actions().stream().filter(action -> action.basket().equals(basket.label())
                            && action.kind() == errand.first().kind()
                            && action.stage() == errand.first().stage() + earlier)
                    .map(Action::person)
                    .filter(person -> problem.hands().stream().anyMatch(one -> one.person().equals(person)))
                    .findFirst().orElse(problem.hands().getFirst().person()));
        }
        return new Way(stages.stream().map(PlannedStage::station).toList(),
                stages.stream().mapToInt(PlannedStage::startSeconds).toArray(),
                stages.stream().mapToInt(PlannedStage::endSeconds).toArray(), persons);
    }

    private static Action action(LineProblem problem, Basket basket, Way way, BadgeId person, Errand.Piece piece) {
        int number = piece.stage();
        StationId to = way.stations().get(number);
        int start = way.starts()[number];
        int end = way.ends()[number];
        int lower = basket.stages().get(number).lowerSeconds();
        return switch (piece.kind()) {
            case CARRY -> carry(problem, basket, way, person, number);
            case LOWER -> new Action(person, basket.label(), piece.kind(), number, to, to, start - lower, start);
            case ATTEND -> new Action(
                    person, basket.label(), piece.kind(), number, to, to, Math.max(0, start), end);
            case LIFT_OUT -> new Action(person, basket.label(), piece.kind(), number, to, to, end,
                    end + basket.stages().get(number).clearSeconds());
        };
    }

    private static Action carry(LineProblem problem, Basket basket, Way way, BadgeId person, int number) {
        Stage rule = basket.stages().get(number);
        StationId to = way.stations().get(number);
        StationId from = number == 0 ? basket.progress().at() : way.stations().get(number - 1);
        int walk = problem.walking().seconds(from, to);
        int lowering = way.starts()[number] - rule.lowerSeconds();
        int begins = number == 0 ? lowering - walk : way.ends()[number - 1];
        int ends = number > 0 && rule.waits()
                ? begins + basket.stages().get(number - 1).clearSeconds() + walk : lowering;
        return new Action(person, basket.label(), Action.Kind.CARRY, number, from, to, begins, ends);
    }
}
