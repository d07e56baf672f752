package brightseam.check;

import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;

/**
 * An entry as its row says, before anything is believed of it.
 *
 * @param position where the row says that it is
 * @param stream the stream's name, in whatever form
 * @param version its place in the chain
 * @param type the event's name
 * @param json the content
 * @param previous the hash that it names as the one before it
 * @param hash the hash that it states
 */
public record StoredRow(
        long position, String stream, long version, String type, String json, String previous, String hash) {

    /** The row of {@code entry}. */
    public static StoredRow of(Entry entry) {
        return new StoredRow(entry.position(), entry.stream().value(), entry.version(), entry.type(), entry.json(),
                entry.previous(), entry.hash());
    }

    /**
     * The same as an entry, its hash not looked at.
     *
     * @throws IllegalArgumentException where the stream has no name that a stream can have
     */
    public Entry entry() {
        return new Entry(position, new StreamName(stream), version, type, json, previous, hash);
    }

    /** Whether stream and type have forms that the ledger stores. */
    public boolean hasForm() {
        return StreamName.isName(stream) && NewEvent.isType(type);
    }

    /** The canonical envelope that is hashed; see {@link Chain#envelope}. */
    public String envelope() {
        return Chain.envelope(new StreamName(stream), version, type, json, previous);
    }

    /** Names it for people. */
    public String place() {
        return "entry " + position + " (version " + version + " of " + stream + ")";
    }
}
