package brightseam.bath;

import java.time.Duration;
import java.util.Optional;

/** Which soak takes off what is wanted and stays inside the hold that the procedure sets. */
public sealed interface Soak {

    /**
     * Any soak between these does both.
     *
     * @param shortest the hold's minimum, or longer where that is needed for the least removal
     * @param longest the hold's maximum, or shorter where more would take off too much; empty for no limit
     * @param leastRemoval what the shortest soak takes off
     */
    record Possible(Duration shortest, Optional<Duration> longest, Removal leastRemoval) implements Soak {}

    /** Even the hold's maximum takes off too little: {@code most} at {@code maximum}. */
    record TooSlow(Removal most, Duration maximum) implements Soak {}

    /** The hold's minimum takes off too much already: {@code least} at {@code minimum}. */
    record TooFast(Removal least, Duration minimum) implements Soak {}

    /** The bath takes off nothing at all, and the hold has no maximum. */
    record NeverEnough() implements Soak {}

    /**
     * A removal that is wanted.
     *
     * @param least at least this much
     * @param most at most this much; empty for no limit
     */
    record Wanted(Removal least, Optional<Removal> most) {
        /** Refuses a most below the least. */
        public Wanted {
            if (most.filter(more -> more.micrometres() < least.micrometres()).isPresent()) {
                throw new IllegalArgumentException("most removal below the least");
            }
        }
    }

    /**
     * The soak for {@code wanted} at {@code rate} inside a hold.
     *
     * @param minimum the hold's shortest time
     * @param maximum the hold's longest time, if it has one
     * @throws IllegalArgumentException where {@code maximum} lies below {@code minimum} or that below zero
     */
    static Soak within(Duration minimum, Optional<Duration> maximum, Wanted wanted, EtchRate rate) {
        if (minimum.isNegative() || maximum.filter(longest -> longest.compareTo(minimum) < 0).isPresent()) {
            throw new IllegalArgumentException("a hold's maximum is not below its minimum, nor that below zero");
        }
        double leastMinutes = rate.minutesFor(wanted.least());
        Optional<Duration> needed = duration(leastMinutes, true);
        if (needed.isEmpty() || maximum.filter(longest -> longest.compareTo(needed.get()) < 0).isPresent()) {
            return maximum.<Soak>map(longest -> new TooSlow(rate.in(longest), longest)).orElseGet(NeverEnough::new);
        }
        Optional<Duration> allowed = wanted.most()
                .filter(most -> rate.micrometresPerMinute() > 0)
                .flatMap(most -> duration(rate.minutesFor(most), false));
        if (allowed.filter(longest -> longest.compareTo(minimum) < 0).isPresent()) {
            return new TooFast(rate.in(minimum), minimum);
        }
        Duration shortest = later(minimum, needed.get());
        Optional<Duration> longest = allowed.map(most -> maximum.filter(m -> m.compareTo(most) < 0).orElse(most))
                .or(() -> maximum)
                .map(end -> later(end, shortest));
        return new Possible(shortest, longest, rate.in(shortest));
    }

    private static Duration later(Duration one, Duration other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    /** Whole milliseconds, up or down; empty where that is longer than ten years, which is never. */
    private static Optional<Duration> duration(double minutes, boolean up) {
        double millis = minutes * 60_000;
        if (!(millis < Duration.ofDays(3650).toMillis())) {
            return Optional.empty();
        }
        return Optional.of(Duration.ofMillis((long) (up ? Math.ceil(millis - 1e-6) : Math.floor(millis + 1e-6))));
    }
}
