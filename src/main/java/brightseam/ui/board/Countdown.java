package brightseam.ui.board;

import java.time.Duration;

/**
 * Something that runs out.
 *
 * @param kind what sort
 * @param words what happens then, such as {@code Rinse has to begin}
 * @param left shop time until then, negative where it is past
 */
public record Countdown(Kind kind, String words, Duration left) implements Comparable<Countdown> {

    /** Sorts of countdown. */
    public enum Kind {
        /** A running hold reaches its maximum. */
        HOLD,
        /** A gap runs out. */
        GAP,
        /** The clean window closes. */
        WINDOW,
        /** The chamber session of the kit is due. */
        SESSION
    }

    @Override
    public int compareTo(Countdown other) {
        int byTime = left.compareTo(other.left);
        return byTime != 0 ? byTime : kind.compareTo(other.kind);
    }
}
