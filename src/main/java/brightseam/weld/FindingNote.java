package brightseam.weld;

import brightseam.kernel.Syntax;

/**
 * Something that was seen on a joint besides its colour.
 *
 * @param kind a key of the table of findings
 * @param text where and how large
 */
public record FindingNote(String kind, String text) {

    /** The longest text. */
    public static final int TEXT_MAX = 200;

    /** Checks both. */
    public FindingNote {
        Syntax.slug("finding", kind);
        text = Syntax.text("finding", text, TEXT_MAX);
    }
}
