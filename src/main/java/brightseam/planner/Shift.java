package brightseam.planner;

/** A time in which somebody works: from {@code fromSeconds} until {@code untilSeconds}. */
public record Shift(int fromSeconds, int untilSeconds) {

    /** Refuses a shift that ends before it begins. */
    public Shift {
        if (untilSeconds < fromSeconds) {
            throw new IllegalArgumentException("a shift ends after it begins");
        }
    }

    /** Whether all of {@code from} to {@code until} lies inside. */
    public boolean holds(int from, int until) {
        return fromSeconds <= from && until <= untilSeconds;
    }
}
