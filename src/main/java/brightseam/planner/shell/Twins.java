package brightseam.planner.shell;

import brightseam.planner.Basket;
import brightseam.planner.Stage;
import com.google.ortools.sat.CpModel;
import java.util.List;
import java.util.Optional;

/**
 * Baskets that are alike but for their label: any plan stays a plan when two of them change places, so they are taken
 * in the order of the problem, and where only one tank can do a stage and it is left there without hands, in that
 * order throughout.
 */
final class Twins {

    private Twins() {}

    static void state(CpModel model, List<BasketVariables> baskets) {
        for (int i = 0; i < baskets.size(); i++) {
            Optional<BasketVariables> next = next(baskets, i);
            BasketVariables one = baskets.get(i);
            if (next.isEmpty() || !one.basket.mayStay()) {
                continue;
            }
            model.addImplication(next.get().present, one.present);
            for (int number = 0; number <= one.basket.last(); number++) {
                Stage rule = one.basket.stages().get(number);
                if (number > 0 && (rule.stations().size() > 1 || rule.isAttended())) {
                    break;
                }
                model.addLessOrEqual(one.start[number], next.get().start[number])
                        .onlyEnforceIf(next.get().present);
                if (rule.stations().size() > 1 || rule.isAttended()) {
                    break;
                }
            }
        }
    }

    private static Optional<BasketVariables> next(List<BasketVariables> baskets, int index) {
        Basket one = baskets.get(index).basket;
        return baskets.subList(index + 1, baskets.size()).stream().filter(other -> one.isLike(other.basket))
                .findFirst();
    }
}
