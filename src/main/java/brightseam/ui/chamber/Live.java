package brightseam.ui.chamber;

import java.util.List;
import java.util.Optional;

/**
 * What changes by itself, from one second to the next.
 *
 * @param strip the head of the screen
 * @param oxygen oxygen in the chamber now, for the large digits
 * @param conditions what has to hold before an arc; empty where none is about to begin
 * @param purge how the purge goes, while there is something to be said of it
 * @param lock what is measured in the lock, where something is
 */
record Live(Strip strip, Gauge oxygen, List<Condition> conditions, Optional<Purge> purge, Optional<Gauge> lock) {

    /** Copies the list. */
    Live {
        conditions = List.copyOf(conditions);
    }

    /**
     * How a purge goes.
     *
     * @param svg the chart
     * @param words the chart as a sentence
     * @param forecast when the chamber will be fit, in words; why nobody can say, where nobody can
     * @param level what it means that the curve levels off above the limit, where it does
     */
    record Purge(String svg, String words, String forecast, Optional<String> level) {}

    /**
     * Something that has to hold.
     *
     * @param words what
     * @param value how it stands, with its unit and limit
     * @param standing whether it holds
     */
    record Condition(String words, String value, Standing standing) {}

    /** Whether a condition holds. */
    enum Standing {
        /** It holds. */
        HOLDS,
        /** It does not. */
        BROKEN,
        /** Somebody has to say or scan it. */
        ASKED
    }
}
