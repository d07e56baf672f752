package brightseam.session;

import brightseam.kernel.SupplyId;
import java.math.BigDecimal;

/**
 * What a session took out of one supply of argon.
 *
 * @param standardLitres at 15 degrees Celsius and 1 atm
 */
public record ArgonUse(SupplyId supply, String lot, BigDecimal standardLitres) {}
