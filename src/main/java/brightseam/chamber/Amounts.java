package brightseam.chamber;

import java.math.BigDecimal;

/** The checks that the numbers of the gear share. */
final class Amounts {

    private Amounts() {}

    /** Returns {@code value} where it is above zero; else throws, naming {@code what}. */
    static BigDecimal positive(String what, BigDecimal value) {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException(what + ": above zero");
        }
        return value;
    }

    /** Returns {@code value} where it is not below zero; else throws, naming {@code what}. */
    static BigDecimal notNegative(String what, BigDecimal value) {
        if (value.signum() < 0) {
            throw new IllegalArgumentException(what + ": not below zero");
        }
        return value;
    }

    /** Returns {@code value} where it lies between the ends, both included; else throws, naming {@code what}. */
    static BigDecimal between(String what, BigDecimal value, String low, String high) {
        if (value.compareTo(new BigDecimal(low)) < 0 || value.compareTo(new BigDecimal(high)) > 0) {
            throw new IllegalArgumentException(what + ": between " + low + " and " + high);
        }
        return value;
    }
}
