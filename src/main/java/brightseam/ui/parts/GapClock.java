package brightseam.ui.parts;

import brightseam.kernel.Moment;
import brightseam.procedure.Gap;
import com.vaadin.flow.component.Tag;

/** A gap in small: how long until the next step has to have started, and why. Runs in the page like a hold. */
@Tag("shop-gap-clock")
public final class GapClock extends Part {

    private long run;

    /**
     * Makes the clock and starts it.
     *
     * @param next the step that has to start, such as {@code Rinse}
     * @param gap how long, and why
     * @param startedAt the end of the step before
     * @param now the server's moment of this telling
     * @param speed shop seconds in a real second
     */
    public GapClock(String next, Gap gap, Moment startedAt, Moment now, double speed) {
        super("gap-clock.js");
        say("next", next);
        say("reason", gap.reason());
        say("maximum-ms", gap.maximum().toMillis());
        say("speed", speed);
        say("started-ms", startedAt.elapsedMillis());
        tell(now);
    }

    /** Tells the page anew where the shop's elapsed time line stands. */
    public void tell(Moment now) {
        say("now-ms", now.elapsedMillis());
        say("run", ++run);
    }
}
