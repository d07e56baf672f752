package brightseam.weld;

import java.util.Map;
import java.util.Set;

/**
 * What the shop knows that a map is checked against before it is issued.
 *
 * @param piecesByLine how many pieces each line of the kit has
 * @param acceptanceTables the keys of the tables that colours can be judged by
 * @param welded the numbers of the joints that an arc was begun on
 * @param pictureStored whether the map's picture, where it has one, is among the stored pictures
 */
public record MapFacts(
        Map<Integer, Integer> piecesByLine, Set<String> acceptanceTables, Set<String> welded, boolean pictureStored) {

    /** Copies the collections. */
    public MapFacts {
        piecesByLine = Map.copyOf(piecesByLine);
        acceptanceTables = Set.copyOf(acceptanceTables);
        welded = Set.copyOf(welded);
    }

    /** Whether the kit has {@code part}. */
    public boolean has(JointPart part) {
        return part.piece() <= piecesByLine.getOrDefault(part.lineNumber(), 0);
    }
}
