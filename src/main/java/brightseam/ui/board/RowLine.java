package brightseam.ui.board;

import brightseam.ui.desk.Left;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Mark;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.List;

/** One traveller on the board; the whole line leads to its page. */
final class RowLine extends ListItem {

    private BoardRow shown;

    RowLine(BoardRow row, double speed) {
        addClassName("board-row");
        getElement().setAttribute("data-traveller", row.id().value());
        show(row, speed);
    }

    /** Shows {@code row}; what is the same stays, so that focus stays, only the countdowns are told anew. */
    void show(BoardRow row, double speed) {
        boolean sameWords = shown != null && words(shown).equals(words(row));
        shown = row;
        if (sameWords) {
            List<Left> clocks = getElement().getChildren().filter(child -> child.getClassList().contains("row-time"))
                    .flatMap(child -> child.getChildren()).flatMap(line -> line.getChildren())
                    .flatMap(child -> child.getComponent().stream()).filter(Left.class::isInstance)
                    .map(Left.class::cast).toList();
            for (int i = 0; i < clocks.size(); i++) {
                clocks.get(i).show(row.countdowns().get(i).left(), speed);
            }
            return;
        }
        removeAll();
        add(time(row, speed), what(row), where(row), missing(row));
    }

    private static Div time(BoardRow row, double speed) {
        Div time = new Div();
        time.addClassName("row-time");
        row.countdowns().forEach(countdown -> time.add(line(countdown, speed)));
        if (row.countdowns().isEmpty()) {
            time.add(new Paragraph("nothing runs out"));
        }
        return time;
    }

    private static Paragraph line(Countdown countdown, double speed) {
        Paragraph line = new Paragraph(new Span(countdown.words() + " "), new Left(countdown.left(), speed));
        line.addClassName("countdown");
        return line;
    }

    private static Div what(BoardRow row) {
        Div what = new Div(Links.to("board/traveller/" + row.id(), row.id().value()), new Span(row.part()),
                new Span("kit " + row.kit()));
        what.addClassName("row-what");
        return what;
    }

    private static Div where(BoardRow row) {
        Div where = new Div(new Span(row.step()), new Span(row.bin()), new Span("Now: " + row.now()));
        where.addClassName("row-where");
        return where;
    }

    private static Div missing(BoardRow row) {
        Paragraph verdict = new Paragraph(mark(row), new Span(row.verdict()));
        verdict.addClassName("row-verdict");
        Div missing = new Div(verdict);
        row.missing().forEach(words -> missing.add(new Span(words)));
        missing.addClassName("row-missing");
        return missing;
    }

    private static Component mark(BoardRow row) {
        return new Mark(row.stopped() ? Mark.Kind.STOPPED
                : row.verdict().startsWith("Ready") || row.verdict().startsWith("Passed") ? Mark.Kind.SIGNED
                        : Mark.Kind.TO_COME);
    }

    private static List<Object> words(BoardRow row) {
        return List.of(row.part(), row.kit(), row.step(), row.bin(), row.now(), row.verdict(), row.missing(),
                row.countdowns().stream().map(Countdown::words).toList());
    }
}
