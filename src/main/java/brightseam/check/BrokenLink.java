package brightseam.check;

/**
 * Something that does not fit.
 *
 * @param place which entry, head, tile or row
 * @param what is wrong with it, as the end of a sentence that begins with the place
 * @param expected what should be there
 * @param found what is there
 */
public record BrokenLink(String place, String what, String expected, String found) {

    private static final int SHOWN_MAX = 200;

    /** One sentence and the two values, for people. */
    public String words() {
        return place + " " + what + ".\n    expected: " + shortened(expected) + "\n    found:    " + shortened(found);
    }

    private static String shortened(String text) {
        return text.length() <= SHOWN_MAX ? text
                : text.substring(0, SHOWN_MAX) + " … (" + text.length() + " characters)";
    }
}
