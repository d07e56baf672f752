package brightseam.procedure;

import brightseam.kernel.ContactKind;

/**
 * Something that touches the pieces at a step and is scanned before the step begins.
 *
 * @param kind what sort of thing
 * @param type which of that sort, a key of the shared table of supplies
 * @param change whether new ones are put on here; gloves alone are changed
 */
public record Use(ContactKind kind, String type, boolean change) {

    /** The same thing, taken new. */
    public Use changed() {
        return new Use(kind, type, true);
    }
}
