package brightseam.traveller;

import brightseam.kernel.Syntax;

/**
 * What the pieces are.
 *
 * @param partNumber as on the drawing
 * @param description a few words
 * @param drawingRevision frozen at release
 */
public record PartIdentity(String partNumber, String description, String drawingRevision) {

    /** Refuses missing or over-long texts. */
    public PartIdentity {
        partNumber = Syntax.text("part number", partNumber, 40);
        description = Syntax.text("description", description, 80);
        drawingRevision = Syntax.text("drawing revision", drawingRevision, 10);
    }
}
