package brightseam.session;

import brightseam.kernel.SupplyId;
import java.math.BigDecimal;

/**
 * What the register of argon says of the supply that is connected to the chamber.
 *
 * @param supply its label
 * @param lot the maker's lot
 * @param leftStandardLitres what is left of it and of what stands ready behind it, at 15 degrees Celsius and 1 atm
 * @param neededStandardLitres what this session is expected to use to its end, in the same litres
 * @param oxygenPpm oxygen in the gas, as its grade promises or as it was measured
 * @param moisturePpm water vapour in it
 */
public record ArgonFact(SupplyId supply, String lot, BigDecimal leftStandardLitres, BigDecimal neededStandardLitres,
        BigDecimal oxygenPpm, BigDecimal moisturePpm) {

    /** Whether it lasts to the end of the session. */
    public boolean suffices() {
        return leftStandardLitres.compareTo(neededStandardLitres) >= 0;
    }
}
