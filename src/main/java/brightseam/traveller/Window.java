package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.procedure.WindowLimits;
import java.math.BigInteger;
import java.time.Duration;

/** The clean window of one traveller: cleanliness as a state with a clock on it. */
public sealed interface Window {

    /** Nothing has opened it yet. */
    record NotOpen() implements Window {}

    /** It has ended: pieces are not clean any more, or are inside the chamber. */
    record Ended(Moment at, WindowEnd why) implements Window {}

    /**
     * It runs. Each handling state uses it up at its own rate: an hour in the open of a four-hour limit uses a quarter,
     * and the rest is a quarter less in every other state too. The shares add up; at the whole the window has run out.
     *
     * @param openedAt when the opening step was signed
     * @param limits the whole window by handling state
     * @param usedBillionths share used up until {@code since}, in billionths, rounded up
     * @param handling how the pieces have been kept since then
     * @param since when this handling began
     */
    record Open(Moment openedAt, WindowLimits limits, long usedBillionths, Handling handling, Moment since)
            implements Window {

        private static final long WHOLE = 1_000_000_000L;

        /** A window that has just been opened. */
        public static Open at(Moment openedAt, WindowLimits limits, Handling handling) {
            return new Open(openedAt, limits, 0, handling, openedAt);
        }

        /** How much is left at {@code now} if the handling stays as it is; zero where it has run out. */
        public Duration remaining(Moment now) {
            BigInteger left = BigInteger.valueOf(WHOLE - usedAt(now));
            return Duration.ofMillis(
                    left.multiply(BigInteger.valueOf(limitMillis())).divide(BigInteger.valueOf(WHOLE)).longValue());
        }

        /** Whether nothing is left at {@code now}. */
        public boolean hasRunOut(Moment now) {
            return usedAt(now) >= WHOLE;
        }

        /** The same window under other handling from {@code now} on. */
        public Open handled(Handling next, Moment now) {
            return new Open(openedAt, limits, usedAt(now), next, now);
        }

        private long usedAt(Moment now) {
            long millis = Math.max(0, now.since(since).toMillis());
            return millis >= limitMillis() ? WHOLE : Math.min(WHOLE, usedBillionths + shareRoundedUp(millis));
        }

        private long shareRoundedUp(long millis) {
            BigInteger limit = BigInteger.valueOf(limitMillis());
            return BigInteger.valueOf(millis).multiply(BigInteger.valueOf(WHOLE))
                    .add(limit).subtract(BigInteger.ONE).divide(limit).longValue();
        }

        private long limitMillis() {
            return handling.limitOf(limits).toMillis();
        }
    }
}
