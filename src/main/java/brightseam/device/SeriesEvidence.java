package brightseam.device;

import java.util.List;

/**
 * What the readings of one stretch of time prove about a limit.
 *
 * <p>Rules: readings flagged {@link Quality#LATE} are left out. Between two neighbouring readings no further apart than
 * the longest gap the value runs in a straight line. Before the first and after the last reading it stands still, for
 * no longer than the longest gap. Inside a gap nothing is assumed: it counts neither as above nor as below, and what
 * was measured is then not proven. Every other reading counts with its value, doubtful ones too.
 *
 * @param fromMillis where the stretch begins, on the elapsed time line
 * @param toMillis where it ends
 * @param limit in the unit of the series; above it is above, at it is not
 * @param longestGapMillis the longest time between readings that proves something
 * @param count readings in the stretch, late ones left out
 * @param doubtful those of them that are out of range, frozen or uncalibrated
 * @param simulated whether any was made up by a program
 * @param highest the highest reading; not a number where there is none
 * @param meanTimeWeighted the mean over the time that readings cover; not a number where there is none
 * @param millisAbove time above the limit, each crossing rounded to whole milliseconds towards the longer
 * @param excursions stretches above the limit, in order
 * @param gaps stretches that no reading covers, in order
 * @param sha256 lower-case hexadecimal SHA-256 of {@link SeriesText#lines} of those readings
 */
public record SeriesEvidence(long fromMillis, long toMillis, double limit, long longestGapMillis, int count,
        int doubtful, boolean simulated, double highest, double meanTimeWeighted, long millisAbove,
        List<Excursion> excursions, List<Gap> gaps, String sha256) {

    /**
     * One stretch above the limit.
     *
     * @param fromMillis where it begins, rounded down
     * @param toMillis where it ends, rounded up; a single reading between gaps has no length
     * @param peak the highest reading in it
     */
    public record Excursion(long fromMillis, long toMillis, double peak) {

        /** How long it lasted. */
        public long millis() {
            return toMillis - fromMillis;
        }
    }

    /** One stretch without a reading, longer than the longest gap that is allowed. */
    public record Gap(long fromMillis, long toMillis) {

        /** How long it lasted. */
        public long millis() {
            return toMillis - fromMillis;
        }
    }

    /** Copies the lists. */
    public SeriesEvidence {
        excursions = List.copyOf(excursions);
        gaps = List.copyOf(gaps);
    }

    /**
     * What {@code series} proves from {@code fromMillis} to {@code toMillis}; readings outside are not looked at.
     *
     * @param limit positive infinity where there is none
     */
    public static SeriesEvidence of(
            Series series, long fromMillis, long toMillis, double limit, long longestGapMillis) {
        if (toMillis < fromMillis || longestGapMillis < 0 || Double.isNaN(limit)) {
            throw new IllegalArgumentException("a stretch ends after it begins, a gap is not negative");
        }
        Series kept = SeriesText.kept(series, fromMillis, toMillis);
        EvidenceScan scan = new EvidenceScan(fromMillis, toMillis, limit, longestGapMillis);
        scan.over(kept);
        return new SeriesEvidence(fromMillis, toMillis, limit, longestGapMillis, kept.size(), scan.doubtful(),
                kept.isSimulated(), scan.highest(), scan.mean(), scan.millisAbove(), scan.excursions(), scan.gaps(),
                SeriesText.sha256(kept));
    }

    /** Whether the whole stretch is covered, and by nothing but readings that are in order. */
    public boolean isProven() {
        return count > 0 && doubtful == 0 && gaps.isEmpty();
    }

    /** Whether no reading lay above the limit. Says nothing of gaps: see {@link #isProven}. */
    public boolean isWithinLimit() {
        return excursions.isEmpty();
    }
}
