package brightseam.weld;

import java.util.OptionalInt;

/** How much rests on a joint: class A most. */
public enum JointClass {
    /** Failure would lose the structure or hurt somebody. */
    A,
    /** Failure would keep the structure from doing its work. */
    B,
    /** Every other joint. */
    C;

    /**
     * How often an imperfection may be repaired: in class A once (MIL-STD-2219A, 5.4.5.2). The standard's passage sets
     * no number for the others; the shop's own specification may.
     */
    public OptionalInt repairsMax() {
        return this == A ? OptionalInt.of(1) : OptionalInt.empty();
    }
}
