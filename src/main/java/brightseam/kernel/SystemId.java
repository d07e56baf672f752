package brightseam.kernel;


/** The name of a shop system, such as {@code ORDERS-1}. Refuses anything that {@link Syntax#identity} refuses. */
public record SystemId(String value) implements Comparable<SystemId> {

    /** Checks size, characters and form. */
    public SystemId {
        Syntax.identity("name of the system", value);
    }

    @Override
    public int compareTo(SystemId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
