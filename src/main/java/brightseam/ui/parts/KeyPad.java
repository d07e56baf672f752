package brightseam.ui.parts;

import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.EventData;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.shared.Registration;

/** Large keys for gloves: a reading with its unit and limits, a PIN in dots, or a look that is in order or not. */
@Tag("shop-key-pad")
public final class KeyPad extends Part {

    private long run;

    /** Enter was pressed. The value comes from the page: check it. */
    @DomEvent("entered")
    public static class Entered extends ComponentEvent<KeyPad> {
        private final String value;

        /** Called by the framework. */
        public Entered(KeyPad source, boolean fromClient, @EventData("event.detail.value") String value) {
            super(source, fromClient);
            this.value = value;
        }

        /** A number with a point ({@code 52.5}), the PIN's digits, or 1 for in order and 0 for not. */
        public String value() {
            return value;
        }
    }

    private KeyPad(String mode, String label) {
        super("key-pad.js");
        say("mode", mode);
        say("label", label);
        empty();
    }

    /**
     * A pad for a reading.
     *
     * @param label what is read, such as {@code Bath temperature}
     * @param unit its symbol, such as {@code °C}
     * @param limits its limits in words, such as {@code 45 to 60 °C}
     * @param decimals how many decimals are offered, 0 to 4
     * @param signed whether it may be below zero
     */
    public static KeyPad reading(String label, String unit, String limits, int decimals, boolean signed) {
        KeyPad pad = new KeyPad("reading", label);
        pad.say("unit", unit);
        pad.say("limits-text", limits);
        pad.say("decimals", decimals);
        pad.say("signed", signed ? "" : null);
        return pad;
    }

    /** A pad for a PIN of {@code length} digits, shown as dots. */
    public static KeyPad pin(String label, int length) {
        KeyPad pad = new KeyPad("pin", label);
        pad.say("length", length);
        return pad;
    }

    /** Two answers, In order and Not in order; what is to be looked at stands in {@code limits}. */
    public static KeyPad passFail(String label, String limits) {
        KeyPad pad = new KeyPad("pass-fail", label);
        pad.say("limits-text", limits);
        return pad;
    }

    /** Empties the pad. */
    public void empty() {
        say("run", ++run);
    }

    /** Calls {@code listener} when Enter is pressed on something that has the form asked for. */
    public Registration addEnteredListener(ComponentEventListener<Entered> listener) {
        return addListener(Entered.class, listener);
    }
}
