package brightseam.session;

import brightseam.kernel.SupplyId;
import java.util.List;

/**
 * The latest readings of one meter, oldest first.
 *
 * @param meter its label
 * @param troubles why it cannot be relied on now, as words; empty where it can
 * @param points the readings, in ppm by volume, by ascending time; long enough to hold the dwell
 */
public record Stretch(SupplyId meter, List<String> troubles, List<Point> points) {

    /** Copies the lists and refuses readings out of order. */
    public Stretch {
        troubles = List.copyOf(troubles);
        points = List.copyOf(points);
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).elapsedMillis() < points.get(i - 1).elapsedMillis()) {
                throw new IllegalArgumentException("readings out of order");
            }
        }
    }

    /**
     * One reading.
     *
     * @param elapsedMillis on the shop's time line
     * @param ppm what was read
     * @param reliable whether nothing stood against it when it was taken
     */
    public record Point(long elapsedMillis, double ppm, boolean reliable) {}
}
