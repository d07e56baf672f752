package brightseam.seal;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * What an entry says about its own time, beside the heads around it. An entry that came in after a head cannot have
 * been stored before it; where it says so by more than a minute, somebody dated it back, a clock was set, or it was
 * written late and says that itself.
 */
public final class BackDating {

    /** Clocks of one shop may differ by so much without a word: our own choice. */
    public static final Duration TOLERANCE = Duration.ofMinutes(1);

    private BackDating() {}

    /**
     * How long before {@code sealedWithout}, the time of the last head that does not hold the entry, the entry says
     * that it happened.
     *
     * @param stated the time that the entry states
     * @return empty within a minute
     */
    public static Optional<Duration> before(Instant sealedWithout, Instant stated) {
        Duration before = Duration.between(stated, sealedWithout);
        return Optional.of(before).filter(time -> time.compareTo(TOLERANCE) > 0);
    }
}
