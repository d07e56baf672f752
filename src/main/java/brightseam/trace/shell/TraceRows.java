package brightseam.trace.shell;

import brightseam.ledger.Entry;
import brightseam.ledger.shell.FoldedBefore;
import brightseam.ledger.shell.Projection;
import brightseam.trace.TouchChange;
import brightseam.trace.Touches;
import brightseam.trace.Whereabouts;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.shell.TravellerStreams;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Keeps the tables of contacts and of whereabouts at what the travellers' events tell. */
final class TraceRows implements Projection {

    private final ContactRows contacts;
    private final WhereaboutsRows whereabouts;
    private final FoldedBefore<Traveller, TravellerEvent> states;

    TraceRows(JdbcClient jdbc) {
        this.contacts = new ContactRows(jdbc);
        this.whereabouts = new WhereaboutsRows(jdbc);
        this.states = new FoldedBefore<>(TravellerStreams.KIND, jdbc);
    }

    @Override
    public List<String> tables() {
        return List.of("trace_traveller", "trace_contact", "trace_thing");
    }

    @Override
    public void apply(Entry entry) {
        boolean mine = entry.stream().family().equals(TravellerStreams.KIND.family());
        if (mine && TravellerStreams.KIND.codec().knows(entry.type())) {
            Optional<Traveller> before = states.before(entry);
            TravellerEvent event = TravellerStreams.KIND.codec().read(entry);
            Traveller after = TravellerStreams.KIND.evolve().apply(before, event);
            List<TouchChange> changes = Touches.of(before, event);
            contacts.apply(after.id(), changes, entry.position());
            place(before, after, changes, entry.position());
            states.remember(entry, after);
        }
    }

    private void place(Optional<Traveller> before, Traveller after, List<TouchChange> changes, long position) {
        Whereabouts now = Whereabouts.of(after);
        if (before.isEmpty()) {
            whereabouts.insert(now, position);
        } else if (!before.map(Whereabouts::of).filter(now::equals).isPresent()) {
            whereabouts.update(now);
        }
        if (before.isPresent() && changes.stream().anyMatch(ContactRows::beginsInBin)) {
            whereabouts.putInBin(after.id(), position);
        }
    }
}
