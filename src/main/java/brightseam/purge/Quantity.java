package brightseam.purge;

/** The checks that every measured number shares: it is a number, and it lies where such numbers can lie. */
final class Quantity {

    private Quantity() {}

    /** Returns {@code value} where it is above zero and at most {@code most}. */
    static double positive(String what, double value, double most) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(what + " above 0, not " + value);
        }
        return notNegative(what, value, most);
    }

    /** Returns {@code value} where it is zero or above and at most {@code most}. */
    static double notNegative(String what, double value, double most) {
        if (!(value >= 0)) {
            throw new IllegalArgumentException(what + " not below 0, not " + value);
        }
        if (value > most) {
            throw new IllegalArgumentException(what + " at most " + most + ", not " + value);
        }
        return value;
    }

    /** Returns {@code value} where it lies from {@code least} to {@code most}, ends included. */
    static double between(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(what + " from " + least + " to " + most + ", not " + value);
        }
        return value;
    }
}
