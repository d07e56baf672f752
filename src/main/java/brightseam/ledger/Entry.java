package brightseam.ledger;

/**
 * One event in its place.
 *
 * @param position rises through the whole ledger in the order of storing, from 1
 * @param stream whose chain it belongs to
 * @param version its place in the chain, from 1 without a hole
 * @param type the event's name
 * @param json the event's canonical JSON (RFC 8785)
 * @param previous hash of the entry before it in the chain, 64 hexadecimal digits; all zeros for the first
 * @param hash SHA-256 of this entry's canonical envelope, 64 hexadecimal digits; see {@code Chain}
 */
public record Entry(
        long position, StreamName stream, long version, String type, String json, String previous, String hash) {}
