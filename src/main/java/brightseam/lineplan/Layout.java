package brightseam.lineplan;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * How the shop's cleaning line is laid out, how long hands take, and when they work.
 *
 * @param secondsPerMetre how long a metre's walk takes
 * @param readyBefore how long before a chamber session its kit has to be bagged: inspection, lock, purge
 * @param shifts when people work, on every day, in order
 * @param places the classes of station on the line, in the order of the line
 */
public record Layout(double secondsPerMetre, Duration readyBefore, List<Hours> shifts, List<Place> places) {

    /** Working hours of a day; until {@link LocalTime#MAX} is until midnight. */
    public record Hours(LocalTime from, LocalTime until) {
        /** Refuses hours that end before they begin. */
        public Hours {
            if (!from.isBefore(until)) {
                throw new IllegalArgumentException("hours end after they begin: " + from + " to " + until);
            }
        }

        /** Whether they end with the day. */
        boolean untilMidnight() {
            return until.equals(LocalTime.MAX);
        }
    }

    /** Copies the lists. */
    public Layout {
        shifts = List.copyOf(shifts);
        places = List.copyOf(places);
    }

    /** What is known of a class of station; empty where it is not on the line. */
    public Optional<Place> place(String stationClass) {
        return places.stream().filter(place -> place.station().equals(stationClass)).findFirst();
    }
}
