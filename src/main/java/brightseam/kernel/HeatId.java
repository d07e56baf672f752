package brightseam.kernel;

/** The label of a heat of metal, such as {@code H-9T3381}. Refuses anything that {@link Syntax#identity} refuses. */
public record HeatId(String value) implements Comparable<HeatId> {

    /** Checks size, characters and form. */
    public HeatId {
        Syntax.identity("heat label", value);
    }

    @Override
    public int compareTo(HeatId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
