package brightseam.kernel;

/** The name of one chamber session, such as {@code CS-0012}. Refuses anything that {@link Syntax#identity} refuses. */
public record SessionId(String value) implements Comparable<SessionId> {

    /** Checks size, characters and form. */
    public SessionId {
        Syntax.identity("session name", value);
    }

    @Override
    public int compareTo(SessionId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
