package brightseam.ui.board;

import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.kit.Kit;
import brightseam.kit.shell.Kits;
import brightseam.ledger.StreamName;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What one open board knows: every traveller that has not ended and every traveller of an open kit.
 *
 * <p>Filled from the ledger after the board began to follow it, then only what grew is read again, from the ledger too:
 * whatever the board is told of, it has the state after it, in whichever order other listeners are told.
 */
final class BoardBook {

    private final Travellers travellers;
    private final Kits kits;
    private final Map<TravellerId, Card> cards = new TreeMap<>();
    private List<Kit> open = List.of();

    BoardBook(Travellers travellers, Kits kits) {
        this.travellers = travellers;
        this.kits = kits;
    }

    /** Reads everything. */
    void readAll() {
        cards.clear();
        travellers.notEnded().forEach(this::keep);
        readKits();
    }

    /** Reads again what grew; whether the board shows anything of that. */
    boolean grown(Set<StreamName> streams) {
        List<TravellerId> changed = streams.stream().filter(stream -> stream.family().equals("traveller"))
                .map(stream -> new TravellerId(stream.identity())).toList();
        changed.forEach(id -> travellers.find(id).ifPresent(this::keep));
        boolean kitsChanged = streams.stream().anyMatch(stream -> stream.family().equals("kit"));
        if (kitsChanged) {
            readKits();
        }
        return kitsChanged || !changed.isEmpty();
    }

    List<BoardRow> rows(Moment now) {
        return BoardModel.rows(cards.values(), open, now);
    }

    List<KitStanding> kits(Moment now) {
        return BoardModel.kits(cards.values(), open, now);
    }

    Collection<Kit> openKits() {
        return open;
    }

    /** Travellers that are known already follow from {@link #grown}; only the others are read. */
    private void readKits() {
        open = kits.open();
        open.stream().flatMap(kit -> travellers.labelsOfKit(kit.id()).stream())
                .filter(id -> !cards.containsKey(id))
                .forEach(id -> travellers.find(id).ifPresent(this::keep));
    }

    private void keep(Card card) {
        cards.merge(card.id(), card, (old, next) -> next.version() >= old.version() ? next : old);
    }
}
