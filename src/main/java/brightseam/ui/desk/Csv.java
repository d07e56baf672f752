package brightseam.ui.desk;

import brightseam.words.CsvCell;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lists as comma-separated text (RFC 4180). No cell can be run as a formula by a spreadsheet program. */
public final class Csv {

    private Csv() {}

    /** The text of {@code rows} under {@code header}, lines ended by CR LF. */
    public static String write(List<String> header, List<List<String>> rows) {
        return Stream.concat(Stream.of(header), rows.stream())
                .map(row -> row.stream().map(CsvCell::of).collect(Collectors.joining(",")) + "\r\n")
                .collect(Collectors.joining());
    }
}
