package brightseam.ui.gear;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.function.Function;

/** Every source as a bar of what can be drawn, with words beside it; how it is filled is said in words too. */
final class SourceBars extends UnorderedList {

    SourceBars() {
        addClassName("argon-sources");
    }

    /** Replaces the bars; {@code actions} makes what can be done with a source. */
    void show(List<SourceLine> lines, Function<SourceLine, Component> actions) {
        removeAll();
        lines.forEach(line -> add(item(line, actions.apply(line))));
    }

    private static ListItem item(SourceLine line, Component actions) {
        Span label = new Span(line.supply().value());
        label.addClassName("argon-label");
        Span place = new Span(line.placeWord());
        place.addClassName("argon-place");
        Div name = new Div(label, new Span(" " + line.title() + " "), place);
        name.addClassName("argon-name");
        Paragraph amount = new Paragraph(line.amount() + "; " + line.reading() + ".");
        Paragraph detail = new Paragraph(capital(line.detail()) + ".");
        detail.addClassName("desk-note");
        Div words = new Div(name, amount, detail);
        line.against().forEach(sentence -> words.add(new Paragraph(sentence)));
        ListItem item = new ListItem(bar(line), words, actions);
        item.addClassName("argon-source");
        item.getElement().setAttribute("data-supply", line.supply().value());
        item.getElement().setAttribute("data-place", line.place().name().toLowerCase(java.util.Locale.ROOT));
        return item;
    }

    private static Div bar(SourceLine line) {
        Div fill = new Div();
        fill.addClassName("argon-fill");
        fill.getStyle().set("height", line.share().map(part -> Math.round(100 * part) + "%").orElse("0"));
        Span number = new Span(line.share().map(GasWords::percent).orElse("?"));
        Div vessel = new Div(fill);
        vessel.addClassName("argon-vessel");
        Div bar = new Div(vessel, number);
        bar.addClassName("argon-bar");
        bar.getElement().setAttribute("aria-hidden", "true");
        return bar;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
