package brightseam.scan;

/**
 * The part of a camera frame that is looked at: the middle, as fractions of width and height.
 *
 * @param widthFraction above 0, at most 1
 * @param heightFraction above 0, at most 1
 */
public record AimingFrame(double widthFraction, double heightFraction) {

    /** Refuses fractions out of range. */
    public AimingFrame {
        if (!(widthFraction > 0 && widthFraction <= 1 && heightFraction > 0 && heightFraction <= 1)) {
            throw new IllegalArgumentException("fractions of a frame lie above 0 and at most at 1");
        }
    }

    /** The whole frame, for pages that cut it themselves. */
    public static AimingFrame whole() {
        return new AimingFrame(1, 1);
    }

    /** The middle square of a 1280 by 720 frame, 400 pixels on a side. */
    public static AimingFrame middle() {
        return new AimingFrame(400.0 / 1280, 400.0 / 720);
    }
}
