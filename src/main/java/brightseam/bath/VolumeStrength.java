package brightseam.bath;

import java.util.OptionalDouble;

/**
 * A bath's acids as volume percent of named stocks; without the stocks it says nothing. See {@link Stocks}.
 *
 * @param nitricPercent litres of nitric stock in 100 L of bath
 * @param hydrofluoricPercent litres of hydrofluoric stock in 100 L of bath
 */
public record VolumeStrength(double nitricPercent, double hydrofluoricPercent) {

    /** Refuses what is below zero or more than pure acid would be in a usual stock: above 200 and 300 %. */
    public VolumeStrength {
        Quantity.notNegative("nitric acid in vol-%", nitricPercent, 200);
        Quantity.notNegative("hydrofluoric acid in vol-%", hydrofluoricPercent, 300);
    }

    /** Nitric to hydrofluoric stock by volume; empty without hydrofluoric acid. */
    public OptionalDouble ratioByVolume() {
        return hydrofluoricPercent == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(nitricPercent / hydrofluoricPercent);
    }
}
