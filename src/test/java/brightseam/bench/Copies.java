package brightseam.bench;

import brightseam.kernel.TravellerId;
import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.Ledger;
import java.util.ArrayList;
import java.util.List;

/** Makes a long history fast: stores what was really recorded of a traveller again, under other labels. */
final class Copies {

    private static final int TRAVELLERS_AT_ONCE = 20;
    private static final long FIRST_NUMBER = 100_001;

    private final Ledger ledger;
    private long next = FIRST_NUMBER;

    Copies(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Stores {@code count} copies of {@code original} as it stands now; answers their labels. */
    List<TravellerId> of(TravellerId original, int count) {
        List<Entry> recorded = ledger.read(StreamName.of("traveller", original.value()));
        List<TravellerId> labels = new ArrayList<>();
        List<Append> appends = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            TravellerId label = new TravellerId("T-C" + next++);
            labels.add(label);
            appends.add(copy(recorded, original, label));
            if (appends.size() == TRAVELLERS_AT_ONCE || i == count - 1) {
                store(appends);
                appends.clear();
            }
        }
        return labels;
    }

    /** Ends {@code copies} as {@code closed} ended, so that the shop has no more in work than a shop has. */
    void end(List<TravellerId> copies, TravellerId closed) {
        Entry last = ledger.read(StreamName.of("traveller", closed.value())).getLast();
        List<Append> appends = new ArrayList<>();
        for (TravellerId copy : copies) {
            StreamName stream = StreamName.of("traveller", copy.value());
            appends.add(new Append(stream, ledger.version(stream), List.of(new NewEvent(last.type(), last.json()))));
        }
        if (!appends.isEmpty()) {
            store(appends);
        }
    }

    private static Append copy(List<Entry> recorded, TravellerId original, TravellerId label) {
        return new Append(StreamName.of("traveller", label.value()), 0, recorded.stream()
                .map(entry -> new NewEvent(entry.type(), entry.json()
                        .replace('"' + original.value() + '"', '"' + label.value() + '"')))
                .toList());
    }

    private void store(List<Append> appends) {
        if (!(ledger.append(List.copyOf(appends)) instanceof Appended.Stored)) {
            throw new IllegalStateException("a copy was not stored");
        }
    }
}
