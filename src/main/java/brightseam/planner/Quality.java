package brightseam.planner;

/**
 * How good a plan is known to be, by its goal's own measure (see {@link Goal}); less is better.
 *
 * @param measure what the plan measures
 * @param bound what no plan can be below
 * @param millis how long it took to find and prove
 */
public record Quality(long measure, long bound, long millis) {

    /** Whether no plan is better by this measure. */
    public boolean isProven() {
        return measure <= bound;
    }

    /** How far from the best it may be, as a share of the measure; 0 where it is proven. */
    public double gap() {
        return isProven() ? 0 : (measure - bound) / (double) Math.max(1, Math.abs(measure));
    }
}
