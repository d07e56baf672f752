package brightseam.demo;

import brightseam.procedure.ReadingSpec;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.random.RandomGenerator;

/** Invented readings as a shop that runs well would take them: inside the limits, and not all alike. */
final class Typical {

    /** What is usual, and how far readings scatter round it. */
    private record Usual(double value, double scatter) {}

    private static final Map<String, Usual> USUAL = Map.ofEntries(
            Map.entry("vent-hole", new Usual(2.0, 0.1)),
            Map.entry("fit-up-gap", new Usual(0.09, 0.03)),
            Map.entry("wire-diameter", new Usual(1.60, 0.01)),
            Map.entry("rinse-conductivity", new Usual(260, 40)),
            Map.entry("water-conductivity", new Usual(4.2, 1.0)),
            Map.entry("nitric-acid", new Usual(25.0, 0)),
            Map.entry("hydrofluoric-acid", new Usual(1.5, 0)),
            Map.entry("air-temperature", new Usual(72, 3)));

    private Typical() {}

    /** A value for {@code spec}: the usual one where that is inside its limits, else the middle of them. */
    static BigDecimal value(ReadingSpec spec, RandomGenerator chance) {
        if (spec.isPassFail()) {
            return BigDecimal.ONE;
        }
        Usual usual = USUAL.getOrDefault(spec.id(), middle(spec));
        BigDecimal taken = rounded(usual.value() + usual.scatter() * (2 * chance.nextDouble() - 1), spec);
        return spec.limits().admits(taken) ? taken : rounded(middle(spec).value(), spec);
    }

    private static Usual middle(ReadingSpec spec) {
        double least = spec.limits().minimum().map(BigDecimal::doubleValue).orElse(0.0);
        double most = spec.limits().maximum().map(BigDecimal::doubleValue).orElse(2 * least + 1);
        return new Usual((least + most) / 2, (most - least) / 10);
    }

    private static BigDecimal rounded(double value, ReadingSpec spec) {
        return BigDecimal.valueOf(value).setScale(spec.decimals(), RoundingMode.HALF_UP);
    }
}
