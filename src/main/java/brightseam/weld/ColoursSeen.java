package brightseam.weld;

import java.util.List;
import java.util.Optional;

/**
 * The colours of a joint.
 *
 * @param beforeBrushing whether they were looked at before anything was brushed; a brushed weld shows no colour that
 *     means anything (common practice)
 * @param onTheWeld every colour on the weld itself, keys of the ladder
 * @param bandAtTheEdge the colour of a narrow band at the edge of the gas shield; empty where there is none
 */
public record ColoursSeen(boolean beforeBrushing, List<String> onTheWeld, Optional<String> bandAtTheEdge) {

    /** Takes each colour once. */
    public ColoursSeen {
        onTheWeld = onTheWeld.stream().distinct().toList();
    }
}
