package brightseam.kernel;

/** The label of a kit, such as {@code K-07}. Refuses anything that {@link Syntax#identity} refuses. */
public record KitId(String value) implements Comparable<KitId> {

    /** Checks size, characters and form. */
    public KitId {
        Syntax.identity("kit label", value);
    }

    @Override
    public int compareTo(KitId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
