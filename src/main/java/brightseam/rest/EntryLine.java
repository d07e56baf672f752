package brightseam.rest;

import brightseam.ledger.Chain;
import brightseam.ledger.Entry;

/** One entry of the ledger in a line: its canonical envelope, with hash and position put in by the alphabet. */
final class EntryLine {

    private EntryLine() {}

    static String of(Entry entry) {
        String envelope = Chain.envelope(
                entry.stream(), entry.version(), entry.type(), entry.json(), entry.previous());
        int content = "{\"content\":".length() + entry.json().length();
        return envelope.substring(0, content) + ",\"hash\":\"" + entry.hash() + "\",\"position\":" + entry.position()
                + envelope.substring(content) + "\n";
    }
}
