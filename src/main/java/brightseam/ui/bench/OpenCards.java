package brightseam.ui.bench;

import brightseam.bins.shell.Bins;
import brightseam.kernel.BinId;
import brightseam.kernel.TravellerId;
import brightseam.people.shell.Tablet;
import brightseam.people.shell.Tablets;
import brightseam.procedure.BinClass;
import brightseam.scan.LabelKind;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.springframework.stereotype.Component;

/** Which card is open on which tablet: in the database, so that it comes back; and who has to be told of a move. */
@Component
class OpenCards {

    private final Tablets tablets;
    private final Travellers travellers;
    private final Bins bins;
    private final Map<Object, Listener> listeners = new ConcurrentHashMap<>();

    private record Listener(String tablet, Consumer<String> moved) {}

    OpenCards(Tablets tablets, Travellers travellers, Bins bins) {
        this.tablets = tablets;
        this.travellers = travellers;
        this.bins = bins;
    }

    /** What is open on {@code tablet}, as it stands now. */
    Optional<Load> on(String tablet) {
        return tablets.find(tablet).flatMap(Tablet::openCard).flatMap(this::load);
    }

    /**
     * The load under a label: a bin's contents; or a traveller, with whatever shares its process basket and stands at
     * the same point, since a basket goes through a tank as a whole.
     */
    Optional<Load> load(String label) {
        return LabelKind.BIN.owns(label) ? inside(new BinId(label)) : travellers.find(new TravellerId(label))
                .map(asked -> asked.traveller().placement()
                        .filter(place -> place.binClass() == BinClass.PROCESS_BASKET)
                        .map(place -> around(asked, place.bin()))
                        .orElseGet(() -> Load.around(asked, Optional.empty(), List.of(asked))));
    }

    /** Opens {@code load} on {@code tablet}; it closes wherever else any of it was open. */
    void take(Load load, String tablet) {
        for (Tablet other : tablets.all()) {
            boolean shares = !other.label().equals(tablet) && other.openCard().flatMap(this::load)
                    .filter(open -> !Collections.disjoint(open.ids(), load.ids())).isPresent();
            if (shares) {
                tablets.closeCard(other.label());
                tell(other.label(), tablet);
            }
        }
        tablets.openCard(tablet, load.label());
    }

    /**
     * Calls {@code moved} with the other tablet's label when a card moves away from {@code tablet}, until the answer is
     * run.
     */
    Runnable follow(String tablet, Consumer<String> moved) {
        Object key = new Object();
        listeners.put(key, new Listener(tablet, moved));
        return () -> listeners.remove(key);
    }

    private void tell(String from, String to) {
        listeners.values().stream().filter(listener -> listener.tablet().equals(from))
                .forEach(listener -> listener.moved().accept(to));
    }

    private Optional<Load> inside(BinId bin) {
        return Load.in(bin, travellers.inBin(bin));
    }

    private Load around(Card asked, BinId basket) {
        List<Card> inside = bins.inside(basket).stream().map(id -> id.equals(asked.id()) ? Optional.of(asked)
                : travellers.find(id)).flatMap(Optional::stream).toList();
        return Load.around(asked, Optional.of(basket), inside.isEmpty() ? List.of(asked) : inside);
    }
}
