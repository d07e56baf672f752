package brightseam.kernel;

/** The label of a traveller, such as {@code T-1042}. Refuses anything that {@link Syntax#identity} refuses. */
public record TravellerId(String value) implements Comparable<TravellerId> {

    /** Checks size, characters and form. */
    public TravellerId {
        Syntax.identity("traveller label", value);
    }

    @Override
    public int compareTo(TravellerId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
