package brightseam.planner.shell;

import brightseam.kernel.KitId;
import brightseam.planner.Basket;
import brightseam.planner.Bounds;
import brightseam.planner.Goal;
import brightseam.planner.LineProblem;
import brightseam.planner.Session;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The measures of {@link brightseam.planner.Measure} as expressions of a model. */
final class Objective {

    private Objective() {}

    static LinearExpr first(LineModel line) {
        return switch (line.problem.goal()) {
            case Goal.ForSessions ignored -> leads(line);
            case Goal.Soonest ignored -> LinearExpr.affine(lastEnd(line, line.baskets), 1, 0);
            case Goal.ReadyBy ignored -> leftOut(line);
        };
    }

    static LinearExpr second(LineModel line) {
        return switch (line.problem.goal()) {
            case Goal.ForSessions ignored -> spread(line);
            case Goal.Soonest ignored -> ends(line);
            case Goal.ReadyBy ignored -> LinearExpr.affine(lastEnd(line, line.baskets), 1, 0);
        };
    }

    private static LinearExpr leads(LineModel line) {
        LineProblem problem = line.problem;
        Map<KitId, List<BasketVariables>> kits = new LinkedHashMap<>();
        List<BasketVariables> others = new ArrayList<>();
        for (BasketVariables basket : line.baskets) {
            problem.sessionOf(basket.basket).map(Session::kit).ifPresentOrElse(
                    kit -> kits.computeIfAbsent(kit, one -> new ArrayList<>()).add(basket),
                    () -> others.add(basket));
        }
        LinearExprBuilder sum = LinearExpr.newBuilder();
        kits.forEach((kit, baskets) -> {
            List<BasketVariables> fresh = baskets.stream().filter(one -> one.basket.mayStay()).toList();
            if (!fresh.isEmpty()) {
                sum.add(lead(line, problem.sessionOf(fresh.getFirst().basket).orElseThrow(), fresh));
            }
        });
        if (!others.isEmpty()) {
            sum.add(lastEnd(line, others));
        }
        return sum.build();
    }

    private static IntVar lead(LineModel line, Session session, List<BasketVariables> fresh) {
        int least = Bounds.leadAtLeast(line.problem, session);
        IntVar lead = line.model.newIntVar(least, line.most(), "lead of " + session.kit());
        fresh.forEach(one -> line.model.addGreaterOrEqual(
                LinearExpr.newBuilder().add(lead).add(one.start[0]).build(), session.dueSeconds()));
        return lead;
    }

    private static IntVar lastEnd(LineModel line, List<BasketVariables> baskets) {
        boolean whole = baskets.stream().noneMatch(one -> line.problem.mayLeaveOut(one.basket));
        int least = whole ? Bounds.lastEndAtLeast(line.problem, basketsOf(baskets)) : 0;
        IntVar last = line.model.newIntVar(least, line.most(), "last end");
        baskets.forEach(one -> line.model.addGreaterOrEqual(last, one.ready()).onlyEnforceIf(one.present));
        return last;
    }

    private static LinearExpr leftOut(LineModel line) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        line.baskets.forEach(one -> sum.add(one.present.not()));
        return sum.build();
    }

    private static LinearExpr spread(LineModel line) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        line.baskets.forEach(one -> sum.add(one.ready()).addTerm(one.start[0], -1));
        return sum.build();
    }

    private static LinearExpr ends(LineModel line) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        line.baskets.forEach(one -> sum.add(one.ready()));
        return sum.build();
    }

    private static List<Basket> basketsOf(List<BasketVariables> all) {
        return all.stream().map(one -> one.basket).toList();
    }
}
