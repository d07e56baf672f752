package brightseam.kit;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes kit lines as a parts list. A line admits no formula, so none can come out. */
final class PartsListWriter {

    private PartsListWriter() {}

    static String write(List<KitLine> lines) {
        Stream<String> header = Arrays.stream(PartsColumn.values()).map(PartsColumn::header);
        return Stream.concat(Stream.of(header), lines.stream().map(PartsListWriter::cells))
                .map(cells -> cells.map(PartsListWriter::quoted).collect(Collectors.joining(",")) + "\r\n")
                .collect(Collectors.joining());
    }

    private static Stream<String> cells(KitLine line) {
        return Stream.of(
                line.partNumber(),
                line.description(),
                line.drawingRevision(),
                String.valueOf(line.quantity()),
                line.procedure(),
                line.heat().map(Object::toString).orElse(""));
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == '"' || c == ',' || c == ';');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
