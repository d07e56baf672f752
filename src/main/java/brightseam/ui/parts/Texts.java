package brightseam.ui.parts;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.ArrayList;
import java.util.List;

/** Words on a card, by the names that the style sheets know. */
public final class Texts {

    private Texts() {}

    /** A paragraph that looks like {@code look}. */
    public static Paragraph words(String look, String text) {
        Paragraph words = new Paragraph(text);
        words.addClassName(look);
        return words;
    }

    /** A list, one line for each text. */
    public static UnorderedList lines(List<String> texts) {
        List<Component> items = new ArrayList<>();
        texts.forEach(text -> items.add(new ListItem(text)));
        UnorderedList lines = new UnorderedList();
        lines.addClassName("lines");
        lines.add(items);
        return lines;
    }

    /** The card's question, with the mark of what is due now. */
    public static Div ask(String what) {
        Div ask = new Div(new Mark(Mark.Kind.NOW), new com.vaadin.flow.component.html.Span(what));
        ask.addClassName("ask");
        return ask;
    }

    /** Buttons to choose from, side by side. */
    public static Div choices(List<? extends Component> choices) {
        Div list = new Div();
        list.addClassName("side-choices");
        choices.forEach(list::add);
        return list;
    }

    /** A key pad: beside the words in landscape, below them in portrait. */
    public static Div beside(Component pad) {
        Div place = new Div(pad);
        place.addClassName("pad-place");
        return place;
    }
}
