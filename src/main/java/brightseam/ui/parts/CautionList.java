package brightseam.ui.parts;

import brightseam.procedure.Vocabulary.Caution;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
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

    /**
     * Every caution with what to check, when to stop and first aid, side by side where there is room.
     *
     * @param notice what goes before anything shown here
     */
    public static CautionList of(List<Caution> cautions, String notice) {
        CautionList list = new CautionList(List.of());
        list.setVisible(!cautions.isEmpty());
        list.getElement().removeAllChildren();
        Div side = new Div();
        side.addClassName("cautions");
        cautions.forEach(caution -> side.add(one(caution)));
        Paragraph defer = new Paragraph(notice);
        defer.addClassName("defer");
        list.getElement().appendChild(side.getElement(), defer.getElement());
        return list;
    }

    private static Div one(Caution caution) {
        UnorderedList checks = new UnorderedList();
        caution.checks().forEach(check -> checks.add(new ListItem(new Mark(Mark.Kind.CAUTION), new Span(check))));
        Paragraph stop = new Paragraph("Stop at: " + caution.stop());
        stop.addClassName("stop");
        Paragraph aid = new Paragraph("First aid: " + caution.firstAid());
        aid.addClassName("aid");
        Paragraph harm = new Paragraph(caution.harm());
        harm.addClassName("harm");
        return new Div(new H2(caution.title()), harm, checks, stop, aid);
    }

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
