package brightseam.ui.weld;

import brightseam.kit.Kit;
import brightseam.weld.JointPart;
import brightseam.weld.MapSheet;
import brightseam.weld.WeldMap;
import brightseam.words.Words;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What a lead reads about a weld map besides what stands against issuing it. */
final class MapNotes {

    private MapNotes() {}

    /** Where the map stands, in a line. */
    static String standing(WeldMap map, ZoneId zone) {
        return map.current().map(last -> "Issue " + last.number() + " by " + last.by() + ", "
                        + Words.stamp(last.at().wall(), zone) + (map.isChanged() ? "; changed since, not issued" : "")
                        + ".")
                .orElse("Drawn, not issued: nothing is welded to it yet.");
    }

    /** Pieces of the kit that no joint holds, line by line; filler has none, and other lines may be meant so. */
    static List<String> unjoined(Kit kit, MapSheet sheet) {
        Set<JointPart> named = sheet.joints().stream().flatMap(joint -> joint.parts().stream())
                .collect(Collectors.toSet());
        List<String> lines = new ArrayList<>();
        kit.lines().forEach(line -> {
            List<Integer> bare = IntStream.rangeClosed(1, line.quantity())
                    .filter(piece -> !named.contains(new JointPart(line.lineNumber(), piece))).boxed().toList();
            if (bare.size() == line.quantity()) {
                lines.add("Line " + line.lineNumber() + " " + line.description() + ": no joint holds a piece of it");
            } else if (!bare.isEmpty()) {
                lines.add("Line " + line.lineNumber() + " " + line.description() + ": no joint holds piece "
                        + bare.stream().map(String::valueOf).collect(Collectors.joining(", ")));
            }
        });
        return lines;
    }

    /** Joints that are nowhere on the picture. */
    static List<String> unplaced(MapSheet sheet) {
        return sheet.pictureSha256().isEmpty() ? List.of() : sheet.joints().stream()
                .filter(joint -> joint.spot().isEmpty()).map(joint -> joint.number()).toList();
    }
}
