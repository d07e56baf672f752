package brightseam.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A plain table with a caption; where there is nothing to show, a sentence that says what to do next. Under every table
 * stands the file of its rows, unless {@link #withoutFile()} is said of it.
 *
 * @param <T> what a row is made of
 */
public final class DeskTable<T> extends Div {

    private record Column<T>(String header, Optional<Function<T, Component>> cell, Optional<Function<T, String>> text,
            boolean acts) {

        String inFile(T row) {
            return text.map(words -> words.apply(row)).orElseGet(() -> PlainText.of(cell.orElseThrow().apply(row)));
        }
    }

    private final String caption;
    private final String whenEmpty;
    private final List<Column<T>> columns = new ArrayList<>();
    private final Div body = new Div();
    private Optional<Anchor> file;
    private Supplier<String> content = () -> csv(this.rows);
    private List<T> rows = List.of();

    /** An empty table; {@code whenEmpty} says what to do next. */
    public DeskTable(String caption, String whenEmpty) {
        this.caption = caption;
        this.whenEmpty = whenEmpty;
        this.file = Optional.of(Files.csvOf(this, caption, () -> content.get()));
        body.addClassName("desk-table-body");
        addClassName("desk-table");
        add(body);
    }

    /** Adds a column of texts. */
    public DeskTable<T> text(String header, Function<T, String> cell) {
        return add(header, Optional.of(row -> new Span(cell.apply(row))), Optional.of(cell));
    }

    /** Adds a column of anything, whose words are in the file; the first column heads its row. */
    public DeskTable<T> cell(String header, Function<T, Component> cell) {
        return add(header, Optional.of(cell), Optional.empty());
    }

    /** Adds a column of anything that the file says as {@code text}. */
    public DeskTable<T> cell(String header, Function<T, Component> cell, Function<T, String> text) {
        return add(header, Optional.of(cell), Optional.of(text));
    }

    /** Adds a column of what can be done with a row; the file is without it. */
    public DeskTable<T> act(String header, Function<T, Component> cell) {
        columns.add(new Column<>(header, Optional.of(cell), Optional.empty(), true));
        return this;
    }

    /** Adds a column to the file alone, such as a bare number under {@code header} with its unit. */
    public DeskTable<T> data(String header, Function<T, String> text) {
        return add(header, Optional.empty(), Optional.of(text));
    }

    /** The file has every one of {@code all}, where the page shows some of them. */
    public DeskTable<T> whole(Supplier<List<T>> all) {
        content = () -> csv(all.get());
        return this;
    }

    /** The file is {@code text}, written with more columns than the page has. */
    public DeskTable<T> file(Supplier<String> text) {
        content = text;
        return this;
    }

    /** No file: what is here is no list, or the answer to what somebody has just typed. */
    public DeskTable<T> withoutFile() {
        file = Optional.empty();
        return this;
    }

    /** Replaces the rows. */
    public DeskTable<T> show(List<T> rows) {
        this.rows = List.copyOf(rows);
        body.removeAll();
        file.ifPresent(link -> {
            if (rows.isEmpty() && link.getParent().isPresent()) {
                remove(link);
            } else if (!rows.isEmpty() && link.getParent().isEmpty()) {
                add(link);
            }
        });
        body.add(rows.isEmpty() ? empty() : table());
        return this;
    }

    private Component empty() {
        Paragraph empty = new Paragraph(whenEmpty);
        empty.addClassName("desk-empty");
        return empty;
    }

    private Component table() {
        NativeTable table = new NativeTable();
        table.getCaption().setText(caption);
        NativeTableRow head = table.getHead().addRow();
        columns.stream().filter(column -> column.cell().isPresent())
                .forEach(column -> head.addHeaderCell().setText(column.header()));
        head.getChildren().forEach(cell -> cell.getElement().setAttribute("scope", "col"));
        rows.forEach(row -> fill(table.getBody().addRow(), row));
        return table;
    }

    private void fill(NativeTableRow line, T row) {
        boolean first = true;
        for (Column<T> column : columns) {
            if (column.cell().isEmpty()) {
                continue;
            }
            Component content = column.cell().get().apply(row);
            if (first) {
                NativeTableHeaderCell header = line.addHeaderCell();
                header.getElement().setAttribute("scope", "row");
                header.add(content);
                first = false;
            } else {
                NativeTableCell cell = line.addDataCell();
                cell.getElement().setAttribute("data-head", column.header());
                cell.add(content);
            }
        }
    }

    /** The rows as comma-separated text, as their file has them. */
    String csv(List<T> all) {
        List<Column<T>> told = columns.stream().filter(column -> !column.acts()).toList();
        return Csv.write(told.stream().map(Column::header).toList(),
                all.stream().map(row -> told.stream().map(column -> column.inFile(row)).toList()).toList());
    }

    private DeskTable<T> add(String header, Optional<Function<T, Component>> cell, Optional<Function<T, String>> text) {
        columns.add(new Column<>(header, cell, text, false));
        return this;
    }
}
