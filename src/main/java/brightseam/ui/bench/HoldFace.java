package brightseam.ui.bench;

import brightseam.kernel.Moment;
import brightseam.kernel.shell.ShopClock;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.HoldClock;
import brightseam.ui.parts.RunningHold;
import brightseam.ui.parts.Verdict;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Draws a running hold; the action that ends it wakes when the clock reaches the minimum. */
final class HoldFace {

    private final Bench.Touched touched;
    private final ShopClock clock;

    HoldFace(Bench.Touched touched, ShopClock clock) {
        this.touched = touched;
        this.clock = clock;
    }

    List<Component> draw(WorkCard card, Doing.Holding holding, Bench bench, Supplier<Verdict> end) {
        Moment now = clock.now();
        HoldClock digits = new HoldClock(new RunningHold(holding.label(), holding.begun(), now, holding.hold(),
                clock.speed(), holding.atMinimum(), holding.atMaximum()));
        Action done = Action.main(holding.done(), pressed -> touched.does(end));
        Action early = bench.way("Take out early", () -> bench.model().side(Optional.of(new Side.CuttingShort())));
        boolean kept = !now.isBefore(holding.earliest());
        done.setEnabled(kept);
        early.setVisible(!kept);
        // The page's clock wakes it; whether the minimum was kept is decided when it is pressed.
        digits.addPhaseChangedListener(passed -> {
            done.setEnabled(true);
            early.setVisible(false);
        });
        card.add(digits);
        return List.of(done, early);
    }
}
