package brightseam.bath;

import java.util.OptionalDouble;

/**
 * Pure free acid in a bath.
 *
 * @param nitricGramsPerLitre HNO3
 * @param hydrofluoricGramsPerLitre free HF, without what is bound to titanium
 */
public record AcidContent(double nitricGramsPerLitre, double hydrofluoricGramsPerLitre) {

    /** Refuses what is below zero or more than pure acid: above 1600 and 1300 g/L. */
    public AcidContent {
        Quantity.notNegative("nitric acid in g/L", nitricGramsPerLitre, 1600);
        Quantity.notNegative("hydrofluoric acid in g/L", hydrofluoricGramsPerLitre, 1300);
    }

    /**
     * Nitric to hydrofluoric acid by mass of pure acid; empty without hydrofluoric acid. Procedures also give it by
     * volume of stock, which is another number: see {@link VolumeStrength#ratioByVolume}.
     */
    public OptionalDouble ratioByMass() {
        return hydrofluoricGramsPerLitre == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(nitricGramsPerLitre / hydrofluoricGramsPerLitre);
    }
}
