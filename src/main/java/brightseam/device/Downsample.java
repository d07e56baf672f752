package brightseam.device;

/**
 * A series for a chart of so many columns: of each column the first, the lowest, the highest and the last reading, so
 * that a line drawn through them covers the same pixels as one through all (the M4 aggregation of Jugel and others,
 * VLDB 2014, from memory). No peak is lost. Whatever is said of any reading of a column is said of its highest.
 */
public final class Downsample {

    private final long from;
    private final long to;
    private final int columns;
    private final Column[] filled;

    /** For {@code columns} columns of equal width from {@code fromMillis} to {@code toMillis}. */
    public Downsample(long fromMillis, long toMillis, int columns) {
        if (toMillis < fromMillis || columns < 1) {
            throw new IllegalArgumentException("a chart has a column and ends after it begins");
        }
        this.from = fromMillis;
        this.to = toMillis;
        this.columns = columns;
        this.filled = new Column[columns];
    }

    /** {@code series} for {@code columns} columns; as it is where no column would hold more than four readings. */
    public static Series of(Series series, long fromMillis, long toMillis, int columns) {
        Downsample chart = new Downsample(fromMillis, toMillis, columns);
        chart.add(series);
        return chart.build();
    }

    /** Adds every reading of {@code series}. */
    public void add(Series series) {
        for (int i = 0; i < series.size(); i++) {
            add(series.millis(i), series.value(i), series.flags(i));
        }
    }

    /** Adds one reading; what lies outside the chart is left out. In any order. */
    public void add(long elapsedMillis, double value, int flags) {
        if (elapsedMillis < from || elapsedMillis > to) {
            return;
        }
        int index = (int) Math.min(columns - 1, (elapsedMillis - from) * (double) columns / Math.max(1, to - from));
        if (filled[index] == null) {
            filled[index] = new Column();
        }
        filled[index].add(elapsedMillis, value, flags);
    }

    /** What is drawn: at most four readings for each column, in order of time. */
    public Series build() {
        SeriesBuilder chosen = new SeriesBuilder(columns);
        for (Column column : filled) {
            if (column != null) {
                column.choose(chosen);
            }
        }
        return chosen.build();
    }

    /** The readings of one column that count: each as time, value, flags. */
    private static final class Column {
        private long firstAt = Long.MAX_VALUE;
        private long lastAt = Long.MIN_VALUE;
        private long lowAt;
        private long highAt;
        private double first;
        private double last;
        private double low = Double.POSITIVE_INFINITY;
        private double high = Double.NEGATIVE_INFINITY;
        private int firstFlags;
        private int lastFlags;
        private int lowFlags;
        private int flags;

        void add(long time, double value, int bits) {
            if (time < firstAt) {
                firstAt = time;
                first = value;
                firstFlags = bits;
            }
            if (time >= lastAt) {
                lastAt = time;
                last = value;
                lastFlags = bits;
            }
            if (value < low) {
                low = value;
                lowAt = time;
                lowFlags = bits;
            }
            if (value > high) {
                high = value;
                highAt = time;
            }
            flags |= bits;
        }

        void choose(SeriesBuilder chosen) {
            if (firstAt != highAt) {
                chosen.add(firstAt, first, firstFlags);
            }
            boolean lowIsOwn = lowAt != firstAt && lowAt != lastAt && lowAt != highAt;
            if (lowIsOwn && lowAt < highAt) {
                chosen.add(lowAt, low, lowFlags);
            }
            chosen.add(highAt, high, flags);
            if (lowIsOwn && lowAt > highAt) {
                chosen.add(lowAt, low, lowFlags);
            }
            if (lastAt != highAt && lastAt != firstAt) {
                chosen.add(lastAt, last, lastFlags);
            }
        }
    }
}
