package brightseam.ledger;

/**
 * An event before it is an entry.
 *
 * @param type its name from the owner's explicit table, such as {@code step-signed.1}
 * @param json one JSON object; the ledger stores its canonical form (RFC 8785)
 */
public record NewEvent(String type, String json) {}
