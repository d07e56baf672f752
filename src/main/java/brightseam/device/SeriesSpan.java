package brightseam.device;

import java.util.ArrayList;
import java.util.List;

/**
 * What a chart has to know of a run of readings without looking at each of them.
 *
 * @param fromMillis when the first was taken
 * @param toMillis when the last was
 * @param points how many there are
 * @param first the value of the first
 * @param last the value of the last
 * @param low the lowest value
 * @param lowAt when that was taken
 * @param high the highest value
 * @param highAt when that was taken
 * @param flags what is said of any of them, as bits; see {@link Quality#bits}
 */
public record SeriesSpan(long fromMillis, long toMillis, int points, double first, double last, double low, long lowAt,
        double high, long highAt, int flags) {

    /** A block never reaches over a longer time, so that the blocks of a stretch are found by where they begin. */
    public static final long MILLIS_MAX = 3_600_000;

    private static final int POINTS_USUAL = 1024;

    /** The span of {@code series}, which has a reading. */
    public static SeriesSpan of(Series series) {
        int low = 0;
        int high = 0;
        int flags = 0;
        for (int i = 0; i < series.size(); i++) {
            low = series.value(i) < series.value(low) ? i : low;
            high = series.value(i) > series.value(high) ? i : high;
            flags |= series.flags(i);
        }
        int last = series.size() - 1;
        return new SeriesSpan(series.millis(0), series.millis(last), series.size(), series.value(0),
                series.value(last), series.value(low), series.millis(low), series.value(high), series.millis(high),
                flags);
    }

    /** Whether so many readings over so long are due to be made a block. */
    public static boolean isFull(Series series) {
        return series.size() >= POINTS_USUAL
                || !series.isEmpty() && series.millis(series.size() - 1) - series.millis(0) > MILLIS_MAX;
    }

    /** {@code series} in pieces for blocks: each of about a thousand readings and at most {@link #MILLIS_MAX} long. */
    public static List<Series> pieces(Series series) {
        int wanted = Math.max(1, Math.round((float) series.size() / POINTS_USUAL));
        int length = Math.ceilDiv(series.size(), wanted);
        List<Series> pieces = new ArrayList<>();
        SeriesBuilder piece = new SeriesBuilder(length);
        long start = 0;
        for (int i = 0; i < series.size(); i++) {
            if (piece.size() == length || piece.size() > 0 && series.millis(i) - start > MILLIS_MAX) {
                pieces.add(piece.build());
                piece = new SeriesBuilder(length);
            }
            start = piece.size() == 0 ? series.millis(i) : start;
            piece.add(series.millis(i), series.value(i), series.flags(i));
        }
        if (piece.size() > 0) {
            pieces.add(piece.build());
        }
        return pieces;
    }

    /** Whether it lies within a stretch and is no longer than a column of it, so that it can be drawn as a whole. */
    public boolean isWithin(long startMillis, long endMillis, long columnMillis) {
        return fromMillis >= startMillis && toMillis <= endMillis && toMillis - fromMillis <= columnMillis;
    }

    /** Adds what counts of this span to {@code chart}. */
    public void addTo(Downsample chart) {
        chart.add(fromMillis, first, flags);
        chart.add(lowAt, low, flags);
        chart.add(highAt, high, flags);
        chart.add(toMillis, last, flags);
    }
}
