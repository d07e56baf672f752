package brightseam.kit;

import brightseam.kernel.HeatId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Makes kit lines from a parts list: size, then form, then column names, then every cell. */
final class PartsListReader {

    private static final String HEADERS =
            Arrays.stream(PartsColumn.values()).map(PartsColumn::header).collect(Collectors.joining(", "));

    private final List<ListProblem> problems = new ArrayList<>();
    private final Map<PartsColumn, Integer> places = new EnumMap<>(PartsColumn.class);

    private PartsListReader() {}

    static PartsList read(String csv, int firstNumber) {
        if (csv.length() > PartsList.CHARACTERS_MAX) {
            return rejected(1, csv.length() + " characters", "at most " + PartsList.CHARACTERS_MAX + " characters");
        }
        String text = csv.startsWith("\uFEFF") ? csv.substring(1) : csv;
        CsvReader reader = new CsvReader(text, CsvReader.separator(text));
        if (!reader.problems().isEmpty()) {
            return new PartsList.Rejected(reader.problems());
        }
        List<CsvReader.Row> rows = reader.rows();
        if (rows.isEmpty()) {
            return rejected(1, "", "the column names " + HEADERS);
        }
        List<CsvReader.Row> body = rows.subList(1, rows.size());
        if (body.isEmpty()) {
            return rejected(rows.getFirst().line() + 1, "", "at least one line below the column names");
        }
        if (body.size() > PartsList.LINES_MAX) {
            return rejected(body.get(PartsList.LINES_MAX).line(), body.size() + " lines",
                    "at most " + PartsList.LINES_MAX + " lines");
        }
        return new PartsListReader().lines(rows.getFirst(), body, firstNumber);
    }

    private static PartsList rejected(int line, String found, String expected) {
        return new PartsList.Rejected(List.of(ListProblem.of(line, 1, found, expected)));
    }

    private PartsList lines(CsvReader.Row header, List<CsvReader.Row> body, int firstNumber) {
        place(header);
        if (problems.isEmpty()) {
            body.forEach(row -> check(row, header.cells().size()));
        }
        if (!problems.isEmpty()) {
            return new PartsList.Rejected(problems);
        }
        List<KitLine> lines = new ArrayList<>();
        body.forEach(row -> lines.add(line(row, firstNumber + lines.size())));
        return new PartsList.Accepted(lines);
    }

    private void place(CsvReader.Row header) {
        for (int i = 0; i < header.cells().size(); i++) {
            String name = header.cells().get(i);
            Optional<PartsColumn> column = PartsColumn.named(name);
            if (column.isEmpty()) {
                problems.add(ListProblem.of(header.line(), i + 1, name, "one of the column names " + HEADERS));
            } else if (places.putIfAbsent(column.get(), i) != null) {
                problems.add(ListProblem.of(header.line(), i + 1, name, "each column name once"));
            }
        }
        for (PartsColumn column : PartsColumn.values()) {
            if (!places.containsKey(column)) {
                int end = header.cells().size() + 1;
                problems.add(ListProblem.of(header.line(), end, "", "the column name " + column.header()));
            }
        }
    }

    private void check(CsvReader.Row row, int cells) {
        int found = row.cells().size();
        if (found != cells) {
            int first = Math.min(found, cells) + 1;
            problems.add(ListProblem.of(row.line(), first, found + " cells", cells + " cells, as in the first line"));
            return;
        }
        for (int i = 0; i < cells; i++) {
            String cell = row.cells().get(i);
            PartsColumn column = columnAt(i);
            if (!column.admits(cell)) {
                problems.add(ListProblem.of(row.line(), i + 1, cell, column.expected()));
            }
        }
    }

    private PartsColumn columnAt(int place) {
        return places.entrySet().stream()
                .filter(entry -> entry.getValue() == place)
                .findFirst()
                .orElseThrow()
                .getKey();
    }

    private KitLine line(CsvReader.Row row, int number) {
        String heat = cell(row, PartsColumn.HEAT);
        return new KitLine(
                number,
                cell(row, PartsColumn.PART_NUMBER),
                cell(row, PartsColumn.DESCRIPTION),
                cell(row, PartsColumn.DRAWING_REVISION),
                Integer.parseInt(cell(row, PartsColumn.QUANTITY)),
                cell(row, PartsColumn.PROCEDURE),
                heat.isEmpty() ? Optional.empty() : Optional.of(new HeatId(heat)));
    }

    private String cell(CsvReader.Row row, PartsColumn column) {
        return row.cells().get(places.get(column));
    }
}
