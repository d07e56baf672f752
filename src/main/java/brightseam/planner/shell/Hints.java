package brightseam.planner.shell;

import brightseam.planner.Action;
import brightseam.planner.Errand;
import brightseam.planner.LineProblem;
import brightseam.planner.Plan;
import brightseam.planner.Schedule;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.Literal;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Tells the solver a plan to start from. */
final class Hints {

    private final LineModel line;
    private final Set<Integer> told = new HashSet<>();
    private final Map<HandsTask, Integer> starts = new IdentityHashMap<>();
    private final Map<HandsTask, String> persons = new IdentityHashMap<>();

    private Hints(LineModel line) {
        this.line = line;
    }

    /** Tells {@code plan}; it may leave things open or break rules, the solver mends what it can. */
    static void tell(LineModel line, Plan plan) {
        line.model.clearHints();
        LineProblem problem = line.problem;
        Hints hints = new Hints(line);
        Schedule schedule = Schedule.of(problem, plan);
        for (int i = 0; i < line.baskets.size(); i++) {
            BasketVariables basket = line.baskets.get(i);
            Optional<Schedule.Way> way = schedule.ways().get(i);
            hints.tell(basket.present, way.isPresent());
            way.ifPresent(known -> hints.way(basket, known, plan));
        }
        for (WalkingOrder.Pair pair : line.pairs()) {
            Integer first = hints.starts.get(pair.first());
            Integer second = hints.starts.get(pair.second());
            if (first != null && second != null) {
                hints.tell(pair.firstBefore(), first < second);
                hints.tell(pair.samePerson(),
                        hints.persons.get(pair.first()).equals(hints.persons.get(pair.second())));
            }
        }
    }

    private void way(BasketVariables basket, Schedule.Way way, Plan plan) {
        for (int number = 0; number < basket.start.length; number++) {
            int stage = number;
            tell(basket.start[number], way.starts()[number]);
            tell(basket.end[number], way.ends()[number]);
            basket.at.get(number).forEach((station, literal) ->
                    tell(literal, station.equals(way.stations().get(stage))));
        }
        for (ErrandVariables errand : basket.errands) {
            if (errand.errand.number() < way.persons().size()) {
                String person = way.persons().get(errand.errand.number()).value();
                errand.by.forEach((badge, literal) -> tell(literal, badge.value().equals(person)));
                int begins = action(basket, errand.errand.first(), plan).startSeconds();
                tell(errand.start, begins);
                tell(errand.end, action(basket, errand.errand.last(), plan).endSeconds());
                starts.put(errand.task, begins);
                persons.put(errand.task, person);
            }
        }
    }

    private static Action action(BasketVariables basket, Errand.Piece piece, Plan plan) {
        return plan.actions().stream().filter(action -> action.basket().equals(basket.basket.label())
                && action.kind() == piece.kind() && action.stage() == piece.stage()).findFirst().orElseThrow();
    }

    private void tell(IntVar variable, long value) {
        if (told.add(variable.getIndex())) {
            line.model.addHint(variable, value);
        }
    }

    private void tell(Literal literal, boolean value) {
        int index = literal.getIndex();
        if (told.add(index >= 0 ? index : -index - 1)) {
            line.model.addHint(literal, value);
        }
    }
}
