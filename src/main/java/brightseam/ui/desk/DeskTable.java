package brightseam.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A plain table with a caption; where there is nothing to show, a sentence that says what to do next.
 *
 * @param <T> what a row is made of
 */
public final class DeskTable<T> extends Div {

    private record Column<T>(String header, Function<T, Component> cell) {}

    private final String caption;
    private final String whenEmpty;
    private final List<Column<T>> columns = new ArrayList<>();

    /** An empty table; {@code whenEmpty} says what to do next. */
    public DeskTable(String caption, String whenEmpty) {
        this.caption = caption;
        this.whenEmpty = whenEmpty;
        addClassName("desk-table");
    }

    /** Adds a column of texts. */
    public DeskTable<T> text(String header, Function<T, String> cell) {
        return cell(header, row -> new Span(cell.apply(row)));
    }

    /** Adds a column of anything; the first column heads its row. */
    public DeskTable<T> cell(String header, Function<T, Component> cell) {
        columns.add(new Column<>(header, cell));
        return this;
    }

    /** Replaces the rows. */
    public DeskTable<T> show(List<T> rows) {
        removeAll();
        if (rows.isEmpty()) {
            Paragraph empty = new Paragraph(whenEmpty);
            empty.addClassName("desk-empty");
            add(empty);
            return this;
        }
        NativeTable table = new NativeTable();
        table.getCaption().setText(caption);
        NativeTableRow head = table.getHead().addRow();
        columns.forEach(column -> head.addHeaderCell().setText(column.header()));
        head.getChildren().forEach(cell -> cell.getElement().setAttribute("scope", "col"));
        rows.forEach(row -> fill(table.getBody().addRow(), row));
        add(table);
        return this;
    }

    private void fill(NativeTableRow line, T row) {
        for (int i = 0; i < columns.size(); i++) {
            Component content = columns.get(i).cell().apply(row);
            if (i == 0) {
                NativeTableHeaderCell header = line.addHeaderCell();
                header.getElement().setAttribute("scope", "row");
                header.add(content);
            } else {
                NativeTableCell cell = line.addDataCell();
                cell.getElement().setAttribute("data-head", columns.get(i).header());
                cell.add(content);
            }
        }
    }
}
