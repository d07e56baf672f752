package brightseam.planner.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import brightseam.planner.Hands;
import brightseam.planner.LineProblem;
import brightseam.planner.Shift;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rules for hands: every errand is one person's, inside working hours, one at a time, walking in between. */
final class HandsRules {

    private final CpModel model;
    private final LineProblem problem;
    private final List<ErrandVariables> errands;
    private final Map<BadgeId, List<IntervalVar>> work = new HashMap<>();
    private final WalkingOrder order;

    HandsRules(CpModel model, LineProblem problem, List<ErrandVariables> errands) {
        this.model = model;
        this.problem = problem;
        this.errands = errands;
        order = new WalkingOrder(model, problem.walking());
    }

    /** States the rules; with {@code oneThingAtATime} false all but the working hours are left aside. */
    void state(boolean oneThingAtATime) {
        problem.hands().forEach(one -> work.put(one.person(), breaks(one)));
        for (ErrandVariables errand : errands) {
            IntVar length = model.newIntVar(0, problem.horizonSeconds() * 2L, "");
            model.addEquality(length, LinearExpr.newBuilder().add(errand.end).addTerm(errand.start, -1).build());
            problem.hands().forEach(one -> mayDo(one, errand, length, oneThingAtATime));
            LinearArgument[] all = errand.by.values().toArray(new LinearArgument[0]);
            if (problem.hands().size() > 1) {
                model.addEquality(LinearExpr.sum(all), errand.basket.present);
            } else if (all.length == 0) {
                model.addEquality(errand.basket.present, 0);
            }
        }
        if (oneThingAtATime) {
            work.values().forEach(model::addNoOverlap);
            for (int i = 0; i < errands.size(); i++) {
                for (int j = i + 1; j < errands.size(); j++) {
                    if (errands.get(i).basket == errands.get(j).basket) {
                        order.inOrder(errands.get(i).task, errands.get(j).task);
                    } else {
                        order.inAnyOrder(errands.get(i).task, errands.get(j).task);
                    }
                }
            }
        }
    }

    private void mayDo(Hands one, ErrandVariables errand, IntVar length, boolean oneThingAtATime) {
        String name = errand.basket.basket.label() + ".errand" + errand.errand.number() + " by " + one.person();
        Literal does = problem.hands().size() == 1 ? errand.basket.present : model.newBoolVar(name);
        errand.by.put(one.person(), does);
        IntervalVar interval = model.newOptionalIntervalVar(errand.start, length, errand.end, does, name);
        if (oneThingAtATime) {
            work.get(one.person()).add(interval);
            one.at().ifPresent(place -> errand.basket.places(errand.errand.fromStage()).forEach((from, here) ->
                    model.addGreaterOrEqual(errand.start, problem.walking().seconds(place, from))
                            .onlyEnforceIf(new Literal[] {does, here})));
        } else {
            List<IntervalVar> alone = breaks(one);
            alone.add(interval);
            model.addNoOverlap(alone);
        }
    }

    private List<IntervalVar> breaks(Hands one) {
        List<IntervalVar> breaks = new ArrayList<>();
        long from = -1;
        for (Shift shift : one.shifts()) {
            if (shift.fromSeconds() > Math.max(0, from)) {
                breaks.add(model.newFixedInterval(from, shift.fromSeconds() - from, "break"));
            }
            from = shift.untilSeconds();
        }
        breaks.add(model.newFixedInterval(from, problem.horizonSeconds() * 4L + 1_000_000 - from, "after work"));
        return breaks;
    }

    /** The order of errands, for hints: literal that the first comes before the second. */
    List<WalkingOrder.Pair> pairs() {
        return order.pairs();
    }
}
