package brightseam.evidence.shell;

import brightseam.evidence.Leanings;
import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.Ledger;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Which entries travel with a record. What is chosen and what is left out is told in {@code docs/verify.md}. */
final class EvidenceStreams {

    /** Told whole: they are short and are of this record, or say on what it stands. */
    private static final Set<String> WHOLE =
            Set.of("traveller", "joint", "session", "kit", "heat", "procedure", "stamp");
    /** Whose own leanings travel, too: who judged a joint and with which meter, and what a parent lot leant on. */
    private static final Set<String> LEANT_ON = Set.of("traveller", "joint");
    /** Signing in and PINs are nobody's business but the shop's. */
    private static final Set<String> OF_PERSON = Set.of("person-registered", "roles-changed", "stamp-issued",
            "stamp-withdrawn", "stamp-returned", "stamp-lost", "stamp-voided", "qualification-granted",
            "person-deactivated");
    private static final int WHOLE_MAX = 200;
    private static final int BEFORE = 40;

    private final Ledger ledger;

    EvidenceStreams(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Every stream that a record of these entries leans on, by name, as far as there are entries; without its own. */
    SortedMap<StreamName, List<Entry>> leantOn(List<Entry> own) {
        StreamName ownName = own.getFirst().stream();
        SortedMap<StreamName, List<Entry>> found = new TreeMap<>();
        Deque<List<Entry>> open = new ArrayDeque<>(List.of(own));
        while (!open.isEmpty()) {
            for (Leanings.Thing thing : Leanings.inTexts(open.pop().stream().map(Entry::json))) {
                for (StreamName stream : thing.streams()) {
                    if (!stream.equals(ownName) && !found.containsKey(stream)) {
                        List<Entry> chosen = chosen(stream, own);
                        found.put(stream, chosen);
                        if (LEANT_ON.contains(stream.family())) {
                            open.add(chosen);
                        }
                    }
                }
            }
        }
        found.values().removeIf(List::isEmpty);
        return found;
    }

    private List<Entry> chosen(StreamName stream, List<Entry> own) {
        List<Entry> all = ledger.read(stream);
        if (WHOLE.contains(stream.family())) {
            return all;
        }
        if (stream.family().equals("person")) {
            return all.stream().filter(entry -> OF_PERSON.contains(entry.type().replaceFirst("\\.\\d+$", ""))).toList();
        }
        return all.size() <= WHOLE_MAX ? all : around(all, own);
    }

    /** Those between the record's first entry and its last, and some before, among which the last finding is. */
    private static List<Entry> around(List<Entry> all, List<Entry> own) {
        long from = own.getFirst().position();
        long to = own.getLast().position();
        int first = (int) all.stream().filter(entry -> entry.position() < from).count();
        int end = (int) all.stream().filter(entry -> entry.position() <= to).count();
        return all.subList(Math.max(0, first - BEFORE), end);
    }
}
