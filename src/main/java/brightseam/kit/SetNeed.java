package brightseam.kit;

import brightseam.kernel.Syntax;

/**
 * Something that the chamber session of a kit needs besides parts and filler: fixtures, tools, spare gloves.
 *
 * @param type the key of its type in the shared table of supplies
 * @param title what people call it
 * @param count how many, from 1 to 99
 */
public record SetNeed(String type, String title, int count) {

    private static final int COUNT_MAX = 99;

    /** Refuses a type that is no key, an empty or overlong title and a count outside 1 to 99. */
    public SetNeed {
        type = Syntax.slug("type of supply", type);
        title = Syntax.text("title", title, 80);
        if (count < 1 || count > COUNT_MAX) {
            throw new IllegalArgumentException("count: from 1 to " + COUNT_MAX);
        }
    }
}
