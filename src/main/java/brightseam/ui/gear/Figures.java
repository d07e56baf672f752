package brightseam.ui.gear;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;

/** The three numbers that matter at the manifold, large, and what stands against a session. */
final class Figures extends Div {

    Figures() {
        addClassName("argon-figures");
    }

    /** Replaces the numbers. */
    void show(ArgonBoard board) {
        removeAll();
        Paragraph verdict = new Paragraph(board.verdict());
        verdict.addClassName("argon-verdict");
        Div row = new Div(figure("Can be drawn", board.left()), figure("A session takes", board.takes()),
                figure("Connected lasts, holding", board.lasts()));
        row.addClassName("argon-figure-row");
        add(verdict, row);
        if (board.stops()) {
            Div against = new Div();
            against.addClassName("gear-against");
            board.reasons().forEach(reason -> against.add(new Paragraph(reason)));
            add(against);
        }
        if (board.undated() > 0) {
            Paragraph note = new Paragraph(brightseam.words.Words.count(board.undated(), "kit has", "kits have")
                    + " no time for a session and " + (board.undated() == 1 ? "is" : "are") + " not counted.");
            note.addClassName("desk-note");
            add(note);
        }
    }

    private static Div figure(String name, String value) {
        Span title = new Span(name);
        title.addClassName("argon-figure-name");
        Span number = new Span(value);
        number.addClassName("argon-figure");
        return new Div(title, number);
    }
}
