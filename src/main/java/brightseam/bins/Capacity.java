package brightseam.bins;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The most that may be inside a bin at once; each limit may be missing.
 *
 * @param travellers lots
 * @param pieces pieces of all lots together
 * @param areaSquareMetres wetted area of all pieces together, in square metres
 * @param massKilograms mass of all pieces together, in kilograms
 */
public record Capacity(
        Optional<Integer> travellers,
        Optional<Integer> pieces,
        Optional<BigDecimal> areaSquareMetres,
        Optional<BigDecimal> massKilograms) {

    private static final int COUNT_MAX = 99_999;
    private static final BigDecimal MEASURE_MAX = BigDecimal.valueOf(10_000);

    /** Refuses limits below 1, or not above zero, and ones that no bin has. */
    public Capacity {
        counted("travellers", travellers);
        counted("pieces", pieces);
        measured("area in m2", areaSquareMetres);
        measured("mass in kg", massKilograms);
    }

    /** A limit of lots alone, or none. */
    public static Capacity ofTravellers(Optional<Integer> travellers) {
        return new Capacity(travellers, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Whether it can only be kept where the {@link LotSize} of everything inside is known. */
    public boolean asksForSizes() {
        return pieces.isPresent() || areaSquareMetres.isPresent() || massKilograms.isPresent();
    }

    private static void counted(String what, Optional<Integer> limit) {
        if (limit.filter(count -> count < 1 || count > COUNT_MAX).isPresent()) {
            throw new IllegalArgumentException(what + ": at most a number from 1 to " + COUNT_MAX);
        }
    }

    private static void measured(String what, Optional<BigDecimal> limit) {
        if (limit.filter(most -> most.signum() <= 0 || most.compareTo(MEASURE_MAX) > 0).isPresent()) {
            throw new IllegalArgumentException(what + ": at most a number above 0, up to " + MEASURE_MAX);
        }
    }
}
