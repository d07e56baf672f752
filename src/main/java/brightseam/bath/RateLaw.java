package brightseam.bath;

import java.util.List;
import java.util.Locale;

/**
 * How a bath's rate follows its free hydrofluoric acid and its temperature: proportional to the acid, and half as fast
 * for every so many degrees that it is colder.
 *
 * <p>A rule of thumb, good for a first guess after an addition; a coupon says what the bath really does.
 *
 * @param celsiusForHalf how many degrees colder make it half as fast
 * @param source where the rule is from, printed with every estimate
 */
public record RateLaw(double celsiusForHalf, String source) {

    /** The rule as remembered; the handbook was not at hand, so it is marked as such wherever it is used. */
    public static final RateLaw FROM_MEMORY = new RateLaw(
            10, "ASM Handbook volume 5, from memory, low confidence: proportional to free HF, half for 10 C less");

    /** Refuses a step of less than 1 or more than 100 degrees. */
    public RateLaw {
        Quantity.between("degrees for half the rate", celsiusForHalf, 1, 100);
    }

    /**
     * A bath whose rate was measured on a coupon.
     *
     * @param rate what the coupon showed
     * @param freeHydrofluoricGramsPerLitre the bath's free acid then
     * @param temperatureCelsius the bath's temperature then
     */
    public record Reference(EtchRate rate, double freeHydrofluoricGramsPerLitre, double temperatureCelsius) {
        /** Refuses a bath without free acid, for nothing can be said from it, and one that is ice or steam. */
        public Reference {
            Quantity.positive("free HF in g/L", freeHydrofluoricGramsPerLitre, 1200);
            Quantity.between("temperature in C", temperatureCelsius, 0, 100);
        }
    }

    /**
     * An estimate, never a measurement.
     *
     * @param rate the guess
     * @param workings how it came about
     * @param source the rule that it rests on
     */
    public record Estimate(EtchRate rate, List<Working> workings, String source) {
        /** Copies the list. */
        public Estimate {
            workings = List.copyOf(workings);
        }
    }

    /** The rate of a bath like {@code reference} with other free acid and another temperature. */
    public Estimate estimate(Reference reference, double freeHydrofluoricGramsPerLitre, double temperatureCelsius) {
        Quantity.notNegative("free HF in g/L", freeHydrofluoricGramsPerLitre, 1200);
        Quantity.between("temperature in C", temperatureCelsius, 0, 100);
        double acid = freeHydrofluoricGramsPerLitre / reference.freeHydrofluoricGramsPerLitre();
        double warmth = Math.pow(2, (temperatureCelsius - reference.temperatureCelsius()) / celsiusForHalf);
        EtchRate rate = new EtchRate(reference.rate().micrometresPerMinute() * acid * warmth);
        return new Estimate(rate, List.of(
                new Working("acid factor", String.format(Locale.ROOT, "%s g/L / %s g/L",
                        freeHydrofluoricGramsPerLitre, reference.freeHydrofluoricGramsPerLitre()), acid, ""),
                new Working("temperature factor", String.format(Locale.ROOT, "2 ^ ((%s C - %s C) / %s C)",
                        temperatureCelsius, reference.temperatureCelsius(), celsiusForHalf), warmth, ""),
                new Working("estimated rate", "measured rate x acid factor x temperature factor",
                        rate.micrometresPerMinute(), "um/min")), source);
    }
}
