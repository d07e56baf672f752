package brightseam.procedure;

/**
 * Where a value comes from.
 *
 * @param key what steps cite
 * @param title standard, book or regulation with its clause, or {@code common practice}
 * @param confirmed true where it was checked against the source, false where it comes from memory or practice
 */
public record Source(String key, String title, boolean confirmed) {}
