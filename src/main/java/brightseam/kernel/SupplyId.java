package brightseam.kernel;

/**
 * The label of something that touches parts: a lot of gloves, a solvent, a tool, a gauge, such as {@code G-0031}.
 * Refuses anything that {@link Syntax#identity} refuses.
 */
public record SupplyId(String value) implements Comparable<SupplyId> {

    /** Checks size, characters and form. */
    public SupplyId {
        Syntax.identity("supply label", value);
    }

    @Override
    public int compareTo(SupplyId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
