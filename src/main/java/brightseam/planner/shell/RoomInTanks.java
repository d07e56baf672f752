package brightseam.planner.shell;

import brightseam.kernel.StationId;
import brightseam.planner.LineProblem;
import brightseam.planner.Stage;
import brightseam.planner.Tank;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rule for tanks: room from the start of lowering until the basket has dripped. */
final class RoomInTanks {

    private RoomInTanks() {}

    static void state(CpModel model, LineProblem problem, List<BasketVariables> baskets) {
        Map<StationId, List<IntervalVar>> stays = new HashMap<>();
        for (BasketVariables basket : baskets) {
            for (int number = 0; number < basket.start.length; number++) {
                stay(model, problem, basket, number, stays);
            }
        }
        for (Tank tank : problem.tanks()) {
            List<IntervalVar> here = stays.getOrDefault(tank.id(), List.of());
            if (here.size() <= tank.capacityBaskets()) {
                continue;
            }
            if (tank.capacityBaskets() == 1) {
                model.addNoOverlap(here);
            } else {
                CumulativeConstraint room = model.addCumulative(tank.capacityBaskets());
                here.forEach(interval -> room.addDemand(interval, 1));
            }
        }
    }

    private static void stay(CpModel model, LineProblem problem, BasketVariables basket, int number,
            Map<StationId, List<IntervalVar>> stays) {
        Stage rule = basket.basket.stages().get(number);
        LinearExpr in = LinearExpr.affine(basket.start[number], 1, -rule.lowerSeconds());
        LinearExpr out = LinearExpr.affine(basket.end[number], 1, rule.clearSeconds());
        IntVar length = model.newIntVar(0, problem.horizonSeconds() * 4L + 1_000_000, "");
        model.addEquality(length, LinearExpr.newBuilder().add(basket.end[number])
                .addTerm(basket.start[number], -1).add(rule.lowerSeconds() + rule.clearSeconds()).build());
        basket.at.get(number).forEach((station, literal) ->
                stays.computeIfAbsent(station, id -> new ArrayList<>())
                        .add(model.newOptionalIntervalVar(in, length, out, literal,
                                basket.basket.label() + " in " + station)));
    }
}
