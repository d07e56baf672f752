package brightseam.evidence;

import brightseam.kernel.TravellerId;
import brightseam.ledger.StreamName;
import brightseam.seal.Hash;
import java.util.List;

/**
 * What travels with a record: its entries as they were hashed, each with the way to one signed head of the ledger.
 *
 * @param traveller whose record
 * @param checkpoint the signed note of the head that every entry is proven against
 * @param heads earlier heads of the same ledger, growing, which bound the time in which entries came into it
 * @param keys public keys as text, for convenience alone: whoever made the file wrote them
 * @param parts the traveller's own stream first, then what its record leans on, by name
 */
public record Evidence(TravellerId traveller, String checkpoint, List<Head> heads, List<String> keys,
        List<Part> parts) {

    /** Copies the lists. */
    public Evidence {
        heads = List.copyOf(heads);
        keys = List.copyOf(keys);
        parts = List.copyOf(parts);
    }

    /**
     * An earlier head.
     *
     * @param note signed
     * @param consistency the path from it to the checkpoint: RFC 9162, section 2.1.4
     */
    public record Head(String note, List<Hash> consistency) {

        /** Copies the list. */
        public Head {
            consistency = List.copyOf(consistency);
        }
    }

    /** Entries of one stream, in order. */
    public record Part(StreamName stream, List<Item> items) {

        /** Copies the list. */
        public Part {
            items = List.copyOf(items);
        }
    }

    /**
     * One entry.
     *
     * @param envelope the canonical JSON whose UTF-8 bytes are hashed, see {@code ledger.Chain}
     * @param position in the whole ledger, from 1; its leaf has the number below
     * @param path its inclusion path in the tree of the checkpoint: RFC 9162, section 2.1.3
     */
    public record Item(String envelope, long position, List<Hash> path) {

        /** Copies the list. */
        public Item {
            path = List.copyOf(path);
        }
    }

    /** How many entries there are in all. */
    public int count() {
        return parts.stream().mapToInt(part -> part.items().size()).sum();
    }
}
