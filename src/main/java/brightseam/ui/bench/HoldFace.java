package brightseam.ui.bench;

import brightseam.kernel.Moment;
import brightseam.kernel.shell.ShopClock;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.HoldClock;
import brightseam.ui.parts.RunningHold;
import brightseam.ui.parts.WorkCard;
import java.util.function.Supplier;

/** Draws a running hold; the action that ends it wakes when the clock reaches the minimum. */
final class HoldFace {

    private final Bench.Touched touched;
    private final ShopClock clock;

    HoldFace(Bench.Touched touched, ShopClock clock) {
        this.touched = touched;
        this.clock = clock;
    }

    Action draw(WorkCard card, Doing.Holding holding, Supplier<Verdict> end) {
        Moment now = clock.now();
        HoldClock digits = new HoldClock(new RunningHold(holding.label(), holding.begun(), now, holding.hold(),
                clock.speed(), holding.atMinimum(), holding.atMaximum()));
        Action done = Action.main(holding.done(), pressed -> touched.does(end));
        done.setEnabled(!now.isBefore(holding.earliest()));
        // The page's clock wakes it; whether the minimum was kept is decided when it is pressed.
        digits.addPhaseChangedListener(passed -> done.setEnabled(true));
        card.add(digits);
        return done;
    }
}
