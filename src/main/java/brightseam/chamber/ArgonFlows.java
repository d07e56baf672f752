package brightseam.chamber;

import java.math.BigDecimal;

/**
 * The streams of argon that a chamber is run with, in litres a minute at the chamber's pressure (one atmosphere) and
 * temperature.
 *
 * @param purgeLitresPerMinute while the air is driven out
 * @param holdLitresPerMinute while the chamber is fit, to hold it there
 * @param lockLitresPerMinute while the lock is purged
 * @param temperatureCelsius the gas's usual temperature in the chamber, -20 to 60
 */
public record ArgonFlows(
        BigDecimal purgeLitresPerMinute,
        BigDecimal holdLitresPerMinute,
        BigDecimal lockLitresPerMinute,
        BigDecimal temperatureCelsius) {

    /** Refuses streams of nothing, and a temperature that no shop has. */
    public ArgonFlows {
        Amounts.positive("purge flow", purgeLitresPerMinute);
        Amounts.positive("holding flow", holdLitresPerMinute);
        Amounts.positive("lock flow", lockLitresPerMinute);
        Amounts.between("gas temperature", temperatureCelsius, "-20", "60");
    }
}
