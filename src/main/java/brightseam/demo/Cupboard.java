package brightseam.demo;

import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.kernel.shell.ShopClock;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.Use;
import brightseam.supply.Fitness;
import brightseam.supply.Supply;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.Uses;
import brightseam.traveller.shell.Card;
import java.util.List;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** Where the demo's people find gloves, cloths, solvents, tools and gauges fit for what they are about to do. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
public final class Cupboard {

    private final Supplies supplies;
    private final ShopClock clock;

    Cupboard(Supplies supplies, ShopClock clock) {
        this.supplies = supplies;
        this.clock = clock;
    }

    /**
     * What {@code step} of {@code load} asks for by scan, in the order in which it is asked for.
     *
     * @throws IllegalStateException where nothing fit is there
     */
    public List<SupplyId> take(Step step, List<Card> load) {
        Procedure procedure = load.getFirst().procedure();
        return load.stream().flatMap(card -> Uses.asked(card.traveller(), procedure, step).stream())
                .map(use -> fit(use, procedure, step)).distinct().toList();
    }

    private SupplyId fit(Use use, Procedure procedure, Step step) {
        Moment now = clock.now();
        return supplies.all().stream()
                .filter(supply -> Fitness.objections(supply, List.of(use), procedure.surface(step.id()),
                        Supplies.day(now)).isEmpty())
                .map(Supply::id).findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing fit in the cupboard for " + use));
    }
}
