package brightseam.evidence;

import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An entry with its content as a tree.
 *
 * @param entry its hash derived from its envelope
 * @param content what the event says
 */
record ReadEntry(Entry entry, Json content) {

    /** What stands behind the content of an envelope; it has one form, so that two entries never share an envelope. */
    private static final Pattern TAIL = Pattern.compile(",\"previous\":\"([0-9a-f]{64})\""
            + ",\"stream\":\"([^\"\\\\]{1,80})\",\"type\":\"([^\"\\\\]{1,80})\",\"version\":([1-9]\\d{0,14})}");
    private static final String FRONT = "{\"content\":";
    private static final int TAIL_MAX = 400;

    /** The event's name without the number of its written form: an older form says the same. */
    String kind() {
        return kind(entry.type());
    }

    /** The name in {@code type}, without the number of its written form. */
    static String kind(String type) {
        return type.replaceFirst("\\.\\d+$", "");
    }

    /** The entry at {@code position} whose envelope this is; empty where it has not the form of one. */
    static Optional<ReadEntry> of(String envelope, long position) {
        int tailAt = envelope.lastIndexOf(",\"previous\":\"");
        if (!envelope.startsWith(FRONT) || tailAt < FRONT.length() || envelope.length() - tailAt > TAIL_MAX) {
            return Optional.empty();
        }
        Matcher tail = TAIL.matcher(envelope.substring(tailAt));
        if (!tail.matches() || !NewEvent.isType(tail.group(3))) {
            return Optional.empty();
        }
        try {
            String written = envelope.substring(FRONT.length(), tailAt);
            Json content = StrictJson.read(written);
            Entry bare = new Entry(position, new StreamName(tail.group(2)), Long.parseLong(tail.group(4)),
                    tail.group(3), written, tail.group(1), "");
            String rebuilt = Chain.envelope(bare.stream(), bare.version(), bare.type(), written, bare.previous());
            Entry whole = new Entry(position, bare.stream(), bare.version(), bare.type(), written, bare.previous(),
                    Chain.hash(bare));
            return rebuilt.equals(envelope) && content instanceof Json.Members
                    ? Optional.of(new ReadEntry(whole, content)) : Optional.empty();
        } catch (NotJson | IllegalArgumentException wrong) {
            return Optional.empty();
        }
    }
}
