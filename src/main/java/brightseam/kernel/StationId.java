package brightseam.kernel;

/** The label of a station, such as {@code S-ACID-1}. Refuses anything that {@link Syntax#identity} refuses. */
public record StationId(String value) implements Comparable<StationId> {

    /** Checks size, characters and form. */
    public StationId {
        Syntax.identity("station label", value);
    }

    @Override
    public int compareTo(StationId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
