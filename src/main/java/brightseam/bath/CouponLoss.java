package brightseam.bath;

import java.time.Duration;

/**
 * A coupon weighed before and after a soak.
 *
 * @param massBeforeGrams clean and dry, before
 * @param massAfterGrams rinsed and dry, after
 * @param areaSquareCentimetres all of its surface that was wetted, both faces and the edges
 * @param density of its metal
 */
public record CouponLoss(
        double massBeforeGrams, double massAfterGrams, double areaSquareCentimetres, Density density) {

    /** Refuses masses and areas that are not above zero, and a coupon that grew: then a weighing is wrong. */
    public CouponLoss {
        Quantity.positive("mass before in g", massBeforeGrams, 1e6);
        Quantity.positive("mass after in g", massAfterGrams, 1e6);
        Quantity.positive("area in cm2", areaSquareCentimetres, 1e6);
        if (massAfterGrams > massBeforeGrams) {
            throw new IllegalArgumentException(
                    "a coupon loses mass: " + massBeforeGrams + " g before, " + massAfterGrams + " g after");
        }
    }

    /** What went into the bath, in grams. */
    public double lossGrams() {
        return massBeforeGrams - massAfterGrams;
    }

    /** The mean depth taken off each surface: mass loss / (area x density). */
    public Removal removal() {
        return new Removal(1e4 * lossGrams() / (areaSquareCentimetres * density.gramsPerCubicCentimetre()));
    }

    /**
     * The mean rate over {@code soak}, as ASTM G1 and G31 compute it: K x W / (A x T x D).
     *
     * @throws IllegalArgumentException where {@code soak} is not above zero
     */
    public EtchRate rate(Duration soak) {
        return EtchRate.of(removal(), soak);
    }
}
