package brightseam.planner.shell;

import brightseam.kernel.BadgeId;
import brightseam.planner.Errand;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.Literal;
import java.util.LinkedHashMap;
import java.util.Map;

/** When one errand is done, and by whom. */
final class ErrandVariables {

    final BasketVariables basket;
    final Errand errand;
    final IntVar start;
    final IntVar end;
    final Map<BadgeId, Literal> by = new LinkedHashMap<>();
    final HandsTask task;

    ErrandVariables(CpModel model, BasketVariables basket, Errand errand, long horizon) {
        this.basket = basket;
        this.errand = errand;
        String name = basket.basket.label() + ".errand" + errand.number();
        start = model.newIntVar(0, horizon, name + ".start");
        end = model.newIntVar(0, horizon, name + ".end");
        model.addEquality(start, basket.begins(errand.first()));
        model.addEquality(end, basket.ends(errand.last()));
        task = new HandsTask(start, end, basket.places(errand.fromStage()), basket.places(errand.toStage()), by);
    }
}
