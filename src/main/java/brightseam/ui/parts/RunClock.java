package brightseam.ui.parts;

import brightseam.kernel.Moment;
import com.vaadin.flow.component.Tag;

/** How long something has lasted, in digits of 120 px or more that count up in the page, network or not. */
@Tag("shop-run-clock")
public final class RunClock extends Part {

    /**
     * Makes the clock and starts it.
     *
     * @param label what lasts, such as {@code Arc burns}
     * @param startedAt since when
     * @param now the server's moment of this telling
     * @param speed shop seconds in a real second
     */
    public RunClock(String label, Moment startedAt, Moment now, double speed) {
        super("arc-switch.js");
        say("label", label);
        say("started-ms", startedAt.elapsedMillis());
        say("speed", speed);
        say("now-ms", now.elapsedMillis());
        say("run", 1);
    }
}
