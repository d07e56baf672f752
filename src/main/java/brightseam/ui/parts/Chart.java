package brightseam.ui.parts;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Svg;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.dom.Element;

/** A drawing such as {@link HoldBar} or {@link ReadingScale} on a screen, with its sentence below it. */
@Tag("figure")
@StyleSheet("context://frontend/shop.css")
public final class Chart extends Component {

    private final Svg picture = new Svg();
    private final Element words = new Element("figcaption");

    /** Shows {@code drawing}. */
    public Chart(Drawing drawing) {
        getElement().getClassList().add("shop-chart");
        getElement().appendChild(picture.getElement(), words);
        show(drawing);
    }

    /** Shows {@code drawing} in the other's place. */
    public void show(Drawing drawing) {
        picture.setSvg(drawing.svg());
        words.setText(drawing.words());
    }
}
