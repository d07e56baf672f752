package brightseam.scan;

import brightseam.kernel.Refusal;

/**
 * Somebody else's label where one of ours is needed.
 *
 * @param text what it says, at most 60 characters; from outside, to be escaped wherever it is shown
 */
public record NotOurLabel(String text) implements Refusal {

    private static final int SHOWN_LENGTH_MAX = 60;

    /** Cuts the text to what a screen can show. */
    public NotOurLabel {
        text = text.codePointCount(0, text.length()) <= SHOWN_LENGTH_MAX
                ? text : text.substring(0, text.offsetByCodePoints(0, SHOWN_LENGTH_MAX));
    }

    @Override
    public String code() {
        return "not-our-label";
    }
}
