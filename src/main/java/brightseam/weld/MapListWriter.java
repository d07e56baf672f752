package brightseam.weld;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes planned joints as a list. */
final class MapListWriter {

    private MapListWriter() {}

    static String write(List<MapJoint> joints) {
        Stream<String> header = Arrays.stream(MapColumn.values()).map(MapColumn::header);
        return Stream.concat(Stream.of(header), joints.stream().map(MapListWriter::cells))
                .map(cells -> cells.map(MapListWriter::quoted).collect(Collectors.joining(",")) + "\r\n")
                .collect(Collectors.joining());
    }

    private static Stream<String> cells(MapJoint joint) {
        return Stream.of(
                joint.number(),
                joint.description(),
                joint.jointClass().name(),
                joint.parts().stream().map(JointPart::toString).collect(Collectors.joining(" ")),
                joint.backSide().name().toLowerCase(Locale.ROOT),
                joint.backSideReason().orElse(""),
                joint.filler().map(FillerClass::printed).orElse(""),
                minutes(joint.cooling().hold()),
                joint.cooling().until(),
                joint.cooling().source(),
                joint.acceptance(),
                joint.spot().map(spot -> String.valueOf(spot.x())).orElse(""),
                joint.spot().map(spot -> String.valueOf(spot.y())).orElse(""));
    }

    private static String minutes(Duration hold) {
        BigDecimal minutes = BigDecimal.valueOf(hold.toSeconds()).divide(BigDecimal.valueOf(60), 1,
                RoundingMode.UP).stripTrailingZeros();
        return minutes.signum() == 0 ? "0" : minutes.toPlainString();
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == '"' || c == ',' || c == ';' || c == '\n');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
