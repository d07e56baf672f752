package brightseam.chart;

/**
 * One reading on a chart.
 *
 * @param atMillis when, on the shop's elapsed time line
 * @param value in the chart's unit
 * @param doubt what is doubtful about it
 */
public record ChartPoint(long atMillis, double value, Doubt doubt) {

    /** What is doubtful about a reading; each has a shape of its own. */
    public enum Doubt {
        /** Nothing. */
        NONE("", Canvas.Shape.DISC),
        /** Outside what the meter can measure. */
        OUT_OF_RANGE("out of range", Canvas.Shape.TRIANGLE),
        /** The same value for too long. */
        FROZEN("frozen", Canvas.Shape.SQUARE),
        /** The meter's calibration was past. */
        UNCALIBRATED("uncalibrated", Canvas.Shape.DIAMOND),
        /** Came in late. */
        LATE("late", Canvas.Shape.RING),
        /** Read by a person and typed in. */
        TYPED("typed in", Canvas.Shape.CROSS);

        private final String words;
        private final Canvas.Shape shape;

        Doubt(String words, Canvas.Shape shape) {
            this.words = words;
            this.shape = shape;
        }

        /** In a word or two; empty where nothing is doubtful. */
        public String words() {
            return words;
        }

        Canvas.Shape shape() {
            return shape;
        }
    }

    /** A reading that nothing is doubtful about. */
    public static ChartPoint good(long atMillis, double value) {
        return new ChartPoint(atMillis, value, Doubt.NONE);
    }
}
