package brightseam.ui.weld;

import brightseam.ui.parts.Mark;
import brightseam.weld.Spot;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.Span;
import java.util.Locale;
import java.util.function.Consumer;

/** The picture of a weld map with a mark on every joint; the list beside it says the same in words. */
final class MapFigure extends Div {

    private static final String X = "(event.clientX - element.getBoundingClientRect().left)"
            + " / element.getBoundingClientRect().width";
    private static final String Y = "(event.clientY - element.getBoundingClientRect().top)"
            + " / element.getBoundingClientRect().height";

    MapFigure(String pictureSha256, String title) {
        addClassName("weld-map");
        add(new Image("picture/" + pictureSha256, "Weld map: " + title));
    }

    /** Puts a mark at {@code spot}. */
    void mark(String number, Spot spot, Mark.Kind kind, boolean chosen) {
        Span mark = new Span(new Mark(kind), new Span(number));
        mark.addClassName("weld-mark");
        mark.getElement().setAttribute("aria-hidden", "true");
        mark.getElement().setAttribute("data-joint", number);
        if (chosen) {
            mark.addClassName("chosen");
        }
        mark.getStyle().set("left", percent(spot.x())).set("top", percent(spot.y()));
        add(mark);
    }

    /** Tells {@code placed} where the picture is touched. */
    void onTouch(Consumer<Spot> placed) {
        addClassName("placing");
        getElement().addEventListener("click", touched -> placed.accept(new Spot(
                        thousandths(touched.getEventData().get(X).asDouble()),
                        thousandths(touched.getEventData().get(Y).asDouble()))))
                .addEventData(X).addEventData(Y);
    }

    private static int thousandths(double share) {
        return (int) Math.round(Math.clamp(share, 0, 1) * Spot.MAX);
    }

    private static String percent(int thousandths) {
        return String.format(Locale.ROOT, "%.1f%%", thousandths / 10.0);
    }
}
