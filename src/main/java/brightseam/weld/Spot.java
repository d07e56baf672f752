package brightseam.weld;

/**
 * Where a joint lies on the map's picture.
 *
 * @param x thousandths of the picture's width from its left edge
 * @param y thousandths of its height from its upper edge
 */
public record Spot(int x, int y) {

    /** The far edge. */
    public static final int MAX = 1000;

    /** Refuses what lies outside the picture. */
    public Spot {
        if (x < 0 || x > MAX || y < 0 || y > MAX) {
            throw new IllegalArgumentException("a spot lies on the picture: 0 to " + MAX + " thousandths");
        }
    }
}
