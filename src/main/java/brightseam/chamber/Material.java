package brightseam.chamber;

/**
 * What something is made of, as the shared table tells it.
 *
 * @param key its key, such as {@code stainless-steel}
 * @param name what people call it
 * @param givesOffGas how much gas it gives off in a chamber
 * @param reactsWithTitanium whether it embrittles, alloys with or corrodes titanium by touch, vapour or in the arc
 * @param note what to know about it
 */
public record Material(String key, String name, Gas givesOffGas, boolean reactsWithTitanium, String note) {

    /** How much gas a material gives off. */
    public enum Gas {
        /** None that counts. */
        NONE,
        /** Some, where it is dry and cool. */
        LITTLE,
        /** So much that it never goes in. */
        MUCH
    }

    /** Whether a chamber's list may have it at all. */
    public boolean mayBePermitted() {
        return !reactsWithTitanium && givesOffGas != Gas.MUCH;
    }
}
