package brightseam.traveller.shell;

import brightseam.kernel.TravellerId;
import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Subscription;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.Stream;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Service;

/**
 * The travellers that have not ended, in memory, brought up to date after each stored append: what boards and the watch
 * look at many times a minute.
 */
@Service
public class LiveTravellers implements DisposableBean {

    private final Travellers travellers;
    private final ConcurrentSkipListMap<TravellerId, Card> cards = new ConcurrentSkipListMap<>();
    private final Subscription subscription;

    LiveTravellers(Travellers travellers, Ledger ledger) {
        this.travellers = travellers;
        this.subscription = ledger.onStored(this::stored);
        travellers.notEnded().forEach(this::keep);
    }

    /** All of them, sorted by label. */
    public List<Card> all() {
        return List.copyOf(cards.values());
    }

    /**
     * Brings those of {@code streams} that are travellers up to date at once. A page that is told of a change, on a
     * thread of its own, would otherwise look before this has heard of it.
     */
    public void catchUp(Collection<StreamName> streams) {
        grown(streams.stream());
    }

    @Override
    public void destroy() {
        subscription.close();
    }

    private void stored(List<Entry> entries) {
        grown(entries.stream().map(Entry::stream));
    }

    private void grown(Stream<StreamName> streams) {
        streams.filter(stream -> stream.family().equals(TravellerStreams.KIND.family())).distinct()
                .map(stream -> new TravellerId(stream.identity()))
                .forEach(id -> travellers.find(id).ifPresent(this::keep));
    }

    private void keep(Card card) {
        if (card.traveller().hasEnded()) {
            cards.remove(card.id());
        } else {
            cards.merge(card.id(), card, (old, next) -> next.version() >= old.version() ? next : old);
        }
    }
}
