package brightseam.ui.weld;

import brightseam.weld.WeldColour;
import com.vaadin.flow.component.Svg;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import java.util.function.Predicate;

/** A colour to touch: its swatch, its name, and whether it is chosen as a word and a heavy edge. */
final class SwatchButton extends NativeButton {

    private final Span chosen = new Span("chosen");

    /** {@code touched} says whether the colour is chosen after the touch. */
    SwatchButton(WeldColour colour, String where, Predicate<String> touched, Runnable after) {
        addClassName("swatch");
        getElement().setAttribute("type", "button");
        getElement().setAttribute("data-colour", colour.key());
        Span name = new Span(colour.name());
        name.addClassName("swatch-name");
        chosen.addClassName("swatch-chosen");
        getElement().setAttribute("aria-label", colour.name() + " " + where);
        add(new Svg(Swatch.svg(colour)), name, chosen);
        choose(false);
        addClickListener(pressed -> {
            choose(touched.test(colour.key()));
            after.run();
        });
    }

    /** Shows whether it is chosen. */
    void choose(boolean on) {
        getElement().setAttribute("aria-pressed", String.valueOf(on));
        chosen.setText(on ? "chosen" : "");
    }
}
