package brightseam.session.shell;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kit.Kit;
import brightseam.kit.shell.Kits;
import brightseam.ledger.Versioned;
import brightseam.session.ChamberSession;
import brightseam.session.Item;
import brightseam.session.ListFact;
import brightseam.session.Need;
import brightseam.traveller.Phase;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.springframework.stereotype.Component;

/** What a kit needs in its session, from the kit, its travellers and the usual. */
@Component
final class SessionLists {

    private final Kits kits;
    private final Travellers travellers;
    private final ItemFacts items;
    private final UsualNeeds usual;
    private final ChamberGear gear;

    SessionLists(Kits kits, Travellers travellers, ItemFacts items, UsualNeeds usual, ChamberGear gear) {
        this.kits = kits;
        this.travellers = travellers;
        this.items = items;
        this.usual = usual;
        this.gear = gear;
    }

    /** The list of a session that has not begun. */
    ListFact of(KitId kit, StationId chamber, Moment now) {
        return list(kit, Optional.empty(), purgeAndWork(chamber, false, now));
    }

    /** The list of {@code session} now; behind a shut chamber a window has to last for the work alone. */
    ListFact of(ChamberSession session, Moment now) {
        return list(session.kit(), Optional.of(session),
                purgeAndWork(session.chamber(), session.phase().isShut(), now));
    }

    private Duration purgeAndWork(StationId chamber, boolean shut, Moment now) {
        return gear.outlook(chamber, now).map(outlook -> shut ? outlook.work() : outlook.purgeAndWork())
                .orElse(Duration.ZERO);
    }

    /** Travellers that are past the lock are needed no more, except those that are in this session. */
    private ListFact list(KitId kit, Optional<ChamberSession> session, Duration purgeAndWork) {
        List<Card> cards = travellers.ofKit(kit).stream().filter(card -> card.traveller().phase() == Phase.ACTIVE
                || session.flatMap(one -> one.placed(card.id().value())).isPresent()).toList();
        List<Need> needs = new ArrayList<>();
        TreeSet<String> grades = new TreeSet<>();
        for (Card card : cards) {
            Item item = items.item(card);
            needs.add(new Need(item.kind(), item.label(), item.title(), 1));
            if (item.kind() == Item.Kind.PARTS) {
                items.grade(card).ifPresent(grades::add);
            }
        }
        kit(kit).map(usual::of).orElse(List.of()).forEach(need ->
                needs.add(new Need(Item.Kind.SUPPLY, need.type(), need.title(), need.count())));
        return new ListFact(needs, grades, purgeAndWork);
    }

    /** The kit; empty where it is not registered. */
    Optional<Kit> kit(KitId kit) {
        return kits.find(kit).map(Versioned::state);
    }
}
