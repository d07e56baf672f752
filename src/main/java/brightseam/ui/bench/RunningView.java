package brightseam.ui.bench;

import brightseam.kernel.Moment;
import brightseam.ui.parts.GapClock;
import brightseam.ui.parts.HoldClock;
import brightseam.ui.parts.RunningHold;
import brightseam.ui.parts.Texts;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Section;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Clocks of the loads that run, in the order they are given; in the load view the first one is the largest. */
class RunningView extends Section {

    private final Bench bench;
    private final Runnable turned;
    private final double speed;
    private final Map<Running, Tile> tiles = new LinkedHashMap<>();
    private List<Running> shown = List.of();
    private boolean loadView;

    /** @param turned called when a clock passed a limit, so that the order may have changed */
    RunningView(Bench bench, double speed, Runnable turned) {
        this.bench = bench;
        this.speed = speed;
        this.turned = turned;
        addClassName("running-holds");
        getElement().setAttribute("aria-label", "Loads that run");
    }

    /** Shows {@code loads}; {@code all} where nothing else is on the screen, so that this is the load view. */
    void show(List<Running> loads, boolean all, Moment now) {
        if (loads.equals(shown) && all == loadView) {
            return;
        }
        shown = loads;
        loadView = all;
        getElement().getClassList().set("load-view", all);
        tiles.keySet().retainAll(loads);
        removeAll();
        for (Running load : loads) {
            Tile tile = tiles.computeIfAbsent(load, running -> new Tile(running, now));
            tile.tell(now, all && load.equals(loads.getFirst()));
            add(tile);
        }
    }

    /** One load: its clock, what it is about, and the way to its card, by touch anywhere or by the button. */
    private final class Tile extends Div {

        private final Consumer<Moment> telling;
        private final Consumer<Boolean> sizing;

        Tile(Running load, Moment now) {
            addClassName("running-hold");
            Component clock;
            switch (load.clock()) {
                case Running.Held held -> {
                    HoldClock digits = new HoldClock(hold(held, now));
                    digits.addPhaseChangedListener(passed -> turned.run());
                    telling = at -> digits.show(hold(held, at));
                    sizing = digits::small;
                    clock = digits;
                }
                case Running.Hurried gap -> {
                    GapClock digits = new GapClock(gap.words(), gap.gap(), gap.since(), now, speed);
                    telling = digits::tell;
                    sizing = small -> { };
                    clock = digits;
                }
            }
            Div touched = new Div(clock, Texts.words("running-about", load.about()));
            touched.addClassName("running-clock");
            touched.addClickListener(touch -> bench.touched().shows(() -> bench.model().open(load.label())));
            add(touched, bench.way("Open " + load.label(), () -> bench.model().open(load.label())));
        }

        /** Says anew how late it is, since its element may have been moved; the clock itself stays the same. */
        void tell(Moment now, boolean first) {
            getElement().getClassList().set("first", first);
            sizing.accept(!first);
            telling.accept(now);
        }

        private RunningHold hold(Running.Held held, Moment now) {
            return new RunningHold(held.words(), held.begun(), now, held.hold(), speed, held.atMinimum(),
                    held.atMaximum());
        }
    }
}
