package brightseam.report;

import brightseam.traveller.Handling;
import brightseam.words.Words;

/** A stretch of the clean window in words. */
public final class WindowWords {

    private WindowWords() {}

    /** How and in which bin the pieces were kept. */
    public static String kept(WindowSpan span) {
        boolean inside = span.bin().isEmpty() && span.handling() != Handling.OPEN;
        return (span.opens() ? "window opened, " : "") + (inside ? "in the chamber, reckoned as " : "")
                + Phrases.handling(span.handling())
                + span.bin().map(bin -> " (" + bin + ")").orElse("");
    }

    /** What came of the window at the end of the stretch; empty while it runs. */
    public static String then(WindowSpan span) {
        return span.end().map(Phrases::windowEnd)
                .or(() -> span.left().map(left -> Words.duration(left) + " left if kept so")).orElse("");
    }
}
