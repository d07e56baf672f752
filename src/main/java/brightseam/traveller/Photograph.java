package brightseam.traveller;

import brightseam.kernel.Syntax;

/**
 * A photograph that belongs to a record.
 *
 * @param name what people call it
 * @param sha256 the hash of its bytes, in hex; it finds them again
 */
public record Photograph(String name, String sha256) {

    private static final int NAME_LENGTH_MAX = 80;

    /** Refuses a missing or over-long name. */
    public Photograph {
        name = Syntax.text("photograph", name, NAME_LENGTH_MAX);
    }
}
