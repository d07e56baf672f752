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

    /** Shows {@code drawing}. */
    public Chart(Drawing drawing) {
        getElement().getClassList().add("shop-chart");
        Element words = new Element("figcaption");
        words.setText(drawing.words());
        getElement().appendChild(new Svg(drawing.svg()).getElement(), words);
    }
}
