package brightseam.kit;

import brightseam.kernel.HeatId;
import java.util.Optional;

/**
 * One line of a kit: a lot of identical pieces that becomes a traveller.
 *
 * @param lineNumber its number in the kit, from 1
 * @param partNumber the part's number on the drawing
 * @param description what people call it
 * @param drawingRevision the drawing's revision, or a hyphen for its first issue
 * @param quantity pieces, from 1 to 9999
 * @param procedure the name of the procedure it follows, such as {@code TUBE}; the revision is chosen on release
 * @param heat what it is made of; empty until that is chosen on release
 */
public record KitLine(
        int lineNumber,
        String partNumber,
        String description,
        String drawingRevision,
        int quantity,
        String procedure,
        Optional<HeatId> heat) {

    /** Strips the texts and refuses what {@link PartsColumn} does not admit, and a number below 1. */
    public KitLine {
        if (lineNumber < 1) {
            throw new IllegalArgumentException("line number below 1");
        }
        partNumber = PartsColumn.PART_NUMBER.require(partNumber);
        description = PartsColumn.DESCRIPTION.require(description);
        drawingRevision = PartsColumn.DRAWING_REVISION.require(drawingRevision);
        PartsColumn.QUANTITY.require(String.valueOf(quantity));
        procedure = PartsColumn.PROCEDURE.require(procedure);
    }
}
