package brightseam.weld;

import brightseam.kit.CsvReader;
import brightseam.kit.ListProblem;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Makes planned joints from a list: size, then form, then column names, then every cell, then every line. */
final class MapListReader {

    private static final String HEADERS =
            Arrays.stream(MapColumn.values()).map(MapColumn::header).collect(Collectors.joining(", "));
    private static final BigDecimal SECONDS_PER_MINUTE = BigDecimal.valueOf(60);

    private final List<ListProblem> problems = new ArrayList<>();
    private final Map<MapColumn, Integer> places = new EnumMap<>(MapColumn.class);
    private final Map<String, Integer> seen = new java.util.HashMap<>();

    private MapListReader() {}

    static MapList read(String csv) {
        if (csv.length() > MapList.CHARACTERS_MAX) {
            return rejected(1, csv.length() + " characters", "at most " + MapList.CHARACTERS_MAX + " characters");
        }
        String text = csv.startsWith("\uFEFF") ? csv.substring(1) : csv;
        CsvReader reader = new CsvReader(text, CsvReader.separator(text));
        if (!reader.problems().isEmpty()) {
            return new MapList.Rejected(reader.problems());
        }
        List<CsvReader.Row> rows = reader.rows();
        if (rows.isEmpty()) {
            return rejected(1, "", "the column names " + HEADERS);
        }
        List<CsvReader.Row> body = rows.subList(1, rows.size());
        if (body.isEmpty()) {
            return rejected(rows.getFirst().line() + 1, "", "at least one line below the column names");
        }
        if (body.size() > MapSheet.JOINTS_MAX) {
            return rejected(body.get(MapSheet.JOINTS_MAX).line(), body.size() + " lines",
                    "at most " + MapSheet.JOINTS_MAX + " lines");
        }
        return new MapListReader().joints(rows.getFirst(), body);
    }

    private static MapList rejected(int line, String found, String expected) {
        return new MapList.Rejected(List.of(ListProblem.of(line, 1, found, expected)));
    }

    private MapList joints(CsvReader.Row header, List<CsvReader.Row> body) {
        place(header);
        if (problems.isEmpty()) {
            body.forEach(row -> check(row, header.cells().size()));
        }
        return problems.isEmpty() ? new MapList.Accepted(body.stream().map(this::joint).toList())
                : new MapList.Rejected(problems);
    }

    private void place(CsvReader.Row header) {
        for (int i = 0; i < header.cells().size(); i++) {
            String name = header.cells().get(i);
            Optional<MapColumn> column = MapColumn.named(name);
            if (column.isEmpty()) {
                problems.add(ListProblem.of(header.line(), i + 1, name, "one of the column names " + HEADERS));
            } else if (places.putIfAbsent(column.get(), i) != null) {
                problems.add(ListProblem.of(header.line(), i + 1, name, "each column name once"));
            }
        }
        for (MapColumn column : MapColumn.values()) {
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
        int before = problems.size();
        places.forEach((column, place) -> {
            String cell = row.cells().get(place);
            if (!column.admits(cell)) {
                problems.add(ListProblem.of(row.line(), place + 1, cell, column.expected()));
            }
        });
        if (problems.size() == before) {
            checkLine(row);
        }
    }

    private void checkLine(CsvReader.Row row) {
        Integer earlier = seen.putIfAbsent(cell(row, MapColumn.JOINT), row.line());
        if (earlier != null) {
            problem(row, MapColumn.JOINT, "a number that line " + earlier + " has not used");
        }
        if (cell(row, MapColumn.BACK_SIDE).equals("open") == cell(row, MapColumn.BACK_SIDE_REASON).isEmpty()) {
            problem(row, MapColumn.BACK_SIDE_REASON, MapColumn.BACK_SIDE_REASON.expected());
        }
        if (cell(row, MapColumn.X).isEmpty() != cell(row, MapColumn.Y).isEmpty()) {
            problem(row, cell(row, MapColumn.X).isEmpty() ? MapColumn.X : MapColumn.Y, "both x and y, or neither");
        }
    }

    private void problem(CsvReader.Row row, MapColumn column, String expected) {
        problems.add(ListProblem.of(row.line(), places.get(column) + 1, cell(row, column), expected));
    }

    private MapJoint joint(CsvReader.Row row) {
        String reason = cell(row, MapColumn.BACK_SIDE_REASON);
        return new MapJoint(cell(row, MapColumn.JOINT),
                cell(row, MapColumn.DESCRIPTION),
                JointClass.valueOf(cell(row, MapColumn.CLASS)),
                MapColumn.parts(cell(row, MapColumn.PARTS)),
                BackSide.valueOf(cell(row, MapColumn.BACK_SIDE).toUpperCase(Locale.ROOT)),
                reason.isEmpty() ? Optional.empty() : Optional.of(reason),
                FillerClass.printed(cell(row, MapColumn.FILLER)),
                new Cooling(hold(cell(row, MapColumn.COOLING_MINUTES)), cell(row, MapColumn.COOLING_UNTIL),
                        cell(row, MapColumn.COOLING_SOURCE)),
                cell(row, MapColumn.ACCEPTANCE),
                spot(cell(row, MapColumn.X), cell(row, MapColumn.Y)));
    }

    private static Duration hold(String minutes) {
        return Duration.ofSeconds(new BigDecimal(minutes.replace(',', '.')).multiply(SECONDS_PER_MINUTE).longValue());
    }

    private static Optional<Spot> spot(String x, String y) {
        return x.isEmpty() ? Optional.empty() : Optional.of(new Spot(Integer.parseInt(x), Integer.parseInt(y)));
    }

    private String cell(CsvReader.Row row, MapColumn column) {
        return row.cells().get(places.get(column));
    }
}
