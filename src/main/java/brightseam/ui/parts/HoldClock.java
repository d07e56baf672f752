package brightseam.ui.parts;

import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.EventData;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.shared.Registration;
import java.time.Duration;

/**
 * A hold in digits of 120 px or more: down to the minimum, then down to the maximum, then up. Runs in the page on
 * monotonic time, network or not; keeps the screen awake; a tone of its own before each limit. It shows, it does not
 * decide: whether a hold was kept is the traveller's to say.
 */
@Tag("shop-hold-clock")
public final class HoldClock extends Part {

    private long run;

    /** The clock passed a limit; a reason to ask the server what may be done now. */
    @DomEvent("phase-changed")
    public static class PhaseChanged extends ComponentEvent<HoldClock> {
        private final String phase;

        /** Called by the framework. */
        public PhaseChanged(HoldClock source, boolean fromClient, @EventData("event.detail.phase") String phase) {
            super(source, fromClient);
            this.phase = phase;
        }

        /** {@code holding}, {@code open} (minimum kept) or {@code over}. */
        public String phase() {
            return phase;
        }
    }

    /** Makes the clock and starts it. */
    public HoldClock(RunningHold hold) {
        super("hold-clock.js");
        show(hold);
    }

    /** The same clock in small or in large; it sounds its tones either way. */
    public void small(boolean small) {
        say("small", small ? "" : null);
    }

    /** Tells the page anew where the hold stands. */
    public void show(RunningHold hold) {
        say("label", hold.label());
        say("at-minimum", hold.atMinimum());
        say("at-maximum", hold.atMaximum());
        say("minimum-ms", hold.hold().minimum().toMillis());
        say("maximum-ms", hold.hold().maximum().map(Duration::toMillis).orElse(null));
        say("speed", hold.speed());
        say("started-ms", hold.startedAt().elapsedMillis());
        say("now-ms", hold.now().elapsedMillis());
        say("run", ++run);
    }

    /** Calls {@code listener} when the clock passes a limit. */
    public Registration addPhaseChangedListener(ComponentEventListener<PhaseChanged> listener) {
        return addListener(PhaseChanged.class, listener);
    }
}
