package brightseam.ui.chamber;

import java.util.Optional;

/**
 * An action that somebody touched and that is being asked about.
 *
 * @param act what
 * @param checked whether the cautions are read
 * @param reason the reason, once it is said
 * @param typing whether the reason is typed instead of chosen
 */
record Asked(Act act, boolean checked, Optional<String> reason, boolean typing) {

    /** What is asked for next. */
    enum Stage { CAUTIONS, REASON, PIN, NOTHING_MORE }

    /** As {@code act} is touched. */
    static Asked of(Act act) {
        return new Asked(act, false, Optional.empty(), false);
    }

    Asked confirmed() {
        return new Asked(act, true, reason, typing);
    }

    Asked because(String why) {
        return new Asked(act, checked, Optional.of(why), false);
    }

    Asked inOwnWords() {
        return new Asked(act, checked, reason, true);
    }

    /** What is asked for next. */
    Stage stage() {
        Act.Confirm asks = act.confirm().orElse(null);
        if (asks == null) {
            return Stage.NOTHING_MORE;
        }
        if (!checked && (!asks.cautions().isEmpty() || asks.sign().isEmpty() && asks.reasons().isEmpty())) {
            return Stage.CAUTIONS;
        }
        if (reason.isEmpty() && !asks.reasons().isEmpty()) {
            return Stage.REASON;
        }
        return asks.sign().isPresent() ? Stage.PIN : Stage.NOTHING_MORE;
    }
}
