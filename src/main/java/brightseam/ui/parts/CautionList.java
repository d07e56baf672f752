package brightseam.ui.parts;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;

/**
 * What has to be checked before a step that can hurt. Says what to check, never that it is safe, and that local codes,
 * the material's safety data sheet and the shop's licensed practice rule.
 */
@Tag("section")
@StyleSheet("context://frontend/shop.css")
public final class CautionList extends Component {

    /** Makes the list; takes no place where there are no {@code cautions}. */
    public CautionList(List<String> cautions) {
        getElement().getClassList().add("caution-list");
        getElement().setAttribute("aria-label", "Cautions");
        setVisible(!cautions.isEmpty());
        UnorderedList list = new UnorderedList();
        cautions.forEach(words -> list.add(new ListItem(new Mark(Mark.Kind.CAUTION), new Span(words))));
        Paragraph defer = new Paragraph(
                "Local codes, the safety data sheet and the shop's licensed practice rule over this card.");
        defer.addClassName("defer");
        getElement().appendChild(new H2("Before you start").getElement(), list.getElement(), defer.getElement());
    }
}
