package brightseam.kernel;

/** A step's name inside its procedure, such as {@code acid-pickle}. Refuses what {@link Syntax#slug} refuses. */
public record StepId(String value) {

    /** Checks size, characters and form. */
    public StepId {
        Syntax.slug("step name", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
