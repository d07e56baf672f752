package brightseam.ui.parts;

import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.EventData;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.shared.Registration;

/** Large keys for a few words, for gloves: what is wrong, why a reading is corrected. */
@Tag("shop-text-pad")
public final class TextPad extends Part {

    /** Enter was pressed on three characters or more. The text comes from the page: check it. */
    @DomEvent("entered")
    public static class Entered extends ComponentEvent<TextPad> {
        private final String value;

        /** Called by the framework. */
        public Entered(TextPad source, boolean fromClient, @EventData("event.detail.value") String value) {
            super(source, fromClient);
            this.value = value;
        }

        /** What was entered. */
        public String value() {
            return value;
        }
    }

    /**
     * Makes the pad.
     *
     * @param label what is asked for
     * @param enter what the key that ends it says
     * @param lengthMax how many characters are taken
     */
    public TextPad(String label, String enter, int lengthMax) {
        super("text-pad.js");
        say("label", label);
        say("enter", enter);
        say("length", lengthMax);
        say("run", 1);
    }

    /** Calls {@code listener} when Enter is pressed on a few words. */
    public Registration addEnteredListener(ComponentEventListener<Entered> listener) {
        return addListener(Entered.class, listener);
    }
}
