package brightseam.ui.parts;

import brightseam.words.Words;

/**
 * The mark that everything in a demo shop carries.
 *
 * @param speed shop seconds in a real second, above zero
 */
public record DemoMark(double speed) {

    /** Refuses a speed that is not above zero. */
    public DemoMark {
        if (!(speed > 0)) {
            throw new IllegalArgumentException("a demo clock runs forward");
        }
    }

    /** The words: {@code DEMO – simulated time ×10}. */
    public String words() {
        return "DEMO – simulated time ×" + Words.plain(speed);
    }
}
