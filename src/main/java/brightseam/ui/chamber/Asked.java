package brightseam.ui.chamber;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An action that somebody touched and that is being asked about.
 *
 * @param act what
 * @param checked whether the cautions are read
 * @param reason the reason, once it is said
 * @param typing whether the reason is typed instead of chosen
 * @param scanned the labels that were scanned for it
 * @param allScanned whether nothing more is to be scanned
 */
record Asked(Act act, boolean checked, Optional<String> reason, boolean typing, List<String> scanned,
        boolean allScanned) {

    /** What is asked for next. */
    enum Stage { CAUTIONS, REASON, SCAN, PIN, NOTHING_MORE }

    /** Copies the list. */
    Asked {
        scanned = List.copyOf(scanned);
    }

    /** As {@code act} is touched. */
    static Asked of(Act act) {
        return new Asked(act, false, Optional.empty(), false, List.of(), false);
    }

    /** What stands on the card is read, or everything is scanned. */
    Asked confirmed() {
        return stage() == Stage.SCAN ? new Asked(act, true, reason, typing, scanned, true)
                : new Asked(act, true, reason, typing, scanned, allScanned);
    }

    Asked because(String why) {
        return new Asked(act, checked, Optional.of(why), false, scanned, allScanned);
    }

    Asked inOwnWords() {
        return new Asked(act, checked, reason, true, scanned, allScanned);
    }

    /** With {@code label} scanned; once, however often it is scanned. */
    Asked with(String label) {
        return new Asked(act, checked, reason, typing,
                Stream.concat(scanned.stream(), Stream.of(label)).distinct().toList(), allScanned);
    }

    /** The same without the words that change with what is measured. */
    Asked still() {
        return new Asked(act.still(), checked, reason, typing, scanned, allScanned);
    }

    /** What is asked for next. */
    Stage stage() {
        Act.Confirm asks = act.confirm().orElse(null);
        if (asks == null) {
            return Stage.NOTHING_MORE;
        }
        boolean nothingElse = asks.sign().isEmpty() && asks.reasons().isEmpty() && asks.scan().isEmpty();
        if (!checked && (!asks.cautions().isEmpty() || nothingElse)) {
            return Stage.CAUTIONS;
        }
        if (reason.isEmpty() && !asks.reasons().isEmpty()) {
            return Stage.REASON;
        }
        if (!allScanned && asks.scan().isPresent()) {
            return Stage.SCAN;
        }
        return asks.sign().isPresent() ? Stage.PIN : Stage.NOTHING_MORE;
    }
}
