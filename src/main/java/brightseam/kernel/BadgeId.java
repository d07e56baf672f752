package brightseam.kernel;

/** The label of a person's badge, such as {@code P-0007}. Refuses anything that {@link Syntax#identity} refuses. */
public record BadgeId(String value) implements Comparable<BadgeId> {

    /** Checks size, characters and form. */
    public BadgeId {
        Syntax.identity("badge label", value);
    }

    @Override
    public int compareTo(BadgeId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
