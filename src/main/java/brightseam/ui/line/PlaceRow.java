package brightseam.ui.line;

import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import java.util.List;
import java.util.Optional;

/**
 * One tank or dryer, as the line view shows it.
 *
 * @param station its label
 * @param title what people call it
 * @param stationClass what it is, in words
 * @param outOfUse why nothing may be done at it; empty where it is in use
 * @param inside what is in it or at it now, what is worst first; empty where it is free
 */
record PlaceRow(
        StationId station, String title, String stationClass, Optional<String> outOfUse, List<Inside> inside) {

    /** How it stands with what is inside, the worst first. */
    enum Standing {
        /** Longer than its maximum. */
        OVERRUN("OVERRUN"),
        /** Its minimum is kept. */
        READY("May come out"),
        /** It is held. */
        HELD("Held"),
        /** The step was begun and its hold was not, or it has none. */
        BEGUN("At it, not held");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /**
     * A load at a station.
     *
     * @param load its basket, else the traveller
     * @param travellers which ones, sorted
     * @param pieces how many in all
     * @param step number and title
     * @param since when the hold began, else the step
     * @param earliest when it may come out; empty where nothing is held
     * @param latest when it has to be out, by the tightest of its procedures
     */
    record Inside(Standing standing, String load, List<TravellerId> travellers, int pieces, String step, Moment since,
            Optional<Moment> earliest, Optional<Moment> latest) {}

    /** Free, out of use, or how the worst of what is inside stands. */
    String state() {
        return inside.stream().findFirst().map(one -> one.standing().words())
                .orElse(outOfUse.isPresent() ? "Out of use" : "Free");
    }

    /** Whether something has to be done at once. */
    boolean alarms() {
        return inside.stream().anyMatch(one -> one.standing() == Standing.OVERRUN);
    }
}
