package brightseam.planner.shell;

import brightseam.planner.Basket;
import brightseam.planner.Stage;
import com.google.ortools.sat.CpModel;
import java.util.List;
import java.util.Optional;

/**
 * Baskets that are alike but for their label: any plan stays a plan when two of them change places, so they are begun
 * in the order of the problem. That order lasts as long as changing their places on the way mends it: while they are
 * left without hands in the only tank for the stage, and, with one pair of hands, while these stay with the basket.
 */
final class Twins {

    private Twins() {}

    static void state(CpModel model, List<BasketVariables> baskets, int hands) {
        for (int i = 0; i < baskets.size(); i++) {
            Optional<BasketVariables> next = next(baskets, i);
            BasketVariables one = baskets.get(i);
            if (next.isPresent() && one.basket.mayStay()) {
                model.addImplication(next.get().present, one.present);
                inOrder(model, one, next.get(), hands);
            }
        }
    }

    private static void inOrder(CpModel model, BasketVariables one, BasketVariables next, int hands) {
        for (int number = 0; number <= one.basket.last(); number++) {
            Stage rule = one.basket.stages().get(number);
            boolean only = rule.stations().size() == 1 || rule.isAtStationBefore();
            if (number > 0 && !only && (rule.waits() || hands > 1)) {
                return;
            }
            model.addLessOrEqual(one.start[number], next.start[number]).onlyEnforceIf(next.present);
            if (rule.isAttended() ? hands > 1 : !only) {
                return;
            }
            model.addLessOrEqual(one.end[number], next.end[number]).onlyEnforceIf(next.present);
        }
    }

    private static Optional<BasketVariables> next(List<BasketVariables> baskets, int index) {
        Basket one = baskets.get(index).basket;
        return baskets.subList(index + 1, baskets.size()).stream().filter(other -> one.isLike(other.basket))
                .findFirst();
    }
}
