package brightseam.remote;

import brightseam.kernel.HeatId;
import java.util.Optional;

/**
 * One lot that a shop system asks to be released.
 *
 * @param partNumber as on the drawing
 * @param description what people call the part
 * @param drawingRevision the drawing's revision, or a hyphen for its first issue
 * @param quantity pieces
 * @param procedure the name of the procedure
 * @param procedureRevision the letter of an approved revision, where it is not to be the last one
 * @param heat what it is made of
 */
public record ReleaseLine(String partNumber, String description, String drawingRevision, int quantity,
        String procedure, Optional<String> procedureRevision, HeatId heat) {}
