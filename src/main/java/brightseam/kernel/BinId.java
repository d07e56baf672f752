package brightseam.kernel;

/** The label of a bin of any class, such as {@code B-0142}. Refuses anything that {@link Syntax#identity} refuses. */
public record BinId(String value) implements Comparable<BinId> {

    /** Checks size, characters and form. */
    public BinId {
        Syntax.identity("bin label", value);
    }

    @Override
    public int compareTo(BinId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
