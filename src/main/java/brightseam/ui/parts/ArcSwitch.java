package brightseam.ui.parts;

import brightseam.kernel.Moment;
import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.EventData;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.shared.Registration;

/**
 * One very large touch that begins and ends an arc, and the tablet's foot switch, which does the same. It only says
 * what was pressed: whether an arc may begin is for the server to say.
 */
@Tag("shop-arc-switch")
public final class ArcSwitch extends Part {

    private long run;

    /** Somebody pressed. What it carries comes from the page: check it. */
    @DomEvent("arc-pressed")
    public static class Pressed extends ComponentEvent<ArcSwitch> {
        private final boolean start;
        private final int arc;
        private final long atElapsedMillis;

        /** Called by the framework. */
        public Pressed(ArcSwitch source, boolean fromClient, @EventData("event.detail.want") String want,
                @EventData("event.detail.arc") int arc, @EventData("event.detail.at") double at) {
            super(source, fromClient);
            this.start = "start".equals(want);
            this.arc = arc;
            this.atElapsedMillis = (long) at;
        }

        /** Whether an arc is to begin; else the arc that runs is to end. */
        public boolean isStart() {
            return start;
        }

        /** The number of the arc that the page showed. */
        public int arc() {
            return arc;
        }

        /** When it was pressed, on the shop's elapsed time line as the page knows it. */
        public long atElapsedMillis() {
            return atElapsedMillis;
        }
    }

    /**
     * Makes the switch.
     *
     * @param speed shop seconds in a real second
     */
    public ArcSwitch(double speed) {
        super("arc-switch.js");
        say("speed", speed);
    }

    /** Shows a switch that begins an arc, where {@code usable}; {@code under} says why, or what it does. */
    public void ready(boolean usable, String under, Moment now) {
        show(false, usable, 0, "Arc on", under, now);
    }

    /** Shows a switch that ends arc {@code arc}. */
    public void running(int arc, String under, Moment now) {
        show(true, true, arc, "Arc off", under, now);
    }

    /** Changes what stands below the words. */
    public void under(String words) {
        say("under", words);
    }

    private void show(boolean running, boolean usable, int arc, String words, String under, Moment now) {
        say("running", running ? "" : null);
        say("usable", usable ? "" : null);
        say("arc", arc);
        say("words", words);
        say("under", under);
        say("now-ms", now.elapsedMillis());
        say("run", ++run);
    }

    /** Calls {@code listener} for every press. */
    public Registration addPressedListener(ComponentEventListener<Pressed> listener) {
        return addListener(Pressed.class, listener);
    }
}
