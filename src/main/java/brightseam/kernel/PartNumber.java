package brightseam.kernel;

/** A part's number on its drawing, such as {@code LF-101}. Refuses anything that {@link Syntax#identity} refuses. */
public record PartNumber(String value) implements Comparable<PartNumber> {

    /** Checks size, characters and form. */
    public PartNumber {
        Syntax.identity("part number", value);
    }

    @Override
    public int compareTo(PartNumber other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
