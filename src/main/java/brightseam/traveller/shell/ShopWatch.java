package brightseam.traveller.shell;

import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.shell.Lead;
import brightseam.traveller.TravellerCommand;
import brightseam.traveller.TravellerDecider;
import brightseam.traveller.TravellerEvent;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/**
 * Has what time alone brings about written down soon after it happens, so that boards and inspectors see it. Nothing
 * rests on it: any later command would write the same.
 */
@Component
class ShopWatch {

    private static final Logger LOG = LoggerFactory.getLogger(ShopWatch.class);
    private static final Actor SHOP = new Actor(Origin.SHOP, "server");

    private final LiveTravellers live;
    private final Transactions transactions;
    private final Lead lead;

    ShopWatch(LiveTravellers live, Transactions transactions, Lead lead) {
        this.live = live;
        this.transactions = transactions;
        this.lead = lead;
    }

    @Scheduled(fixedDelay = 1000)
    void look() {
        if (!lead.isLead()) {
            return;
        }
        Origin origin = transactions.origin(SHOP);
        live.all().stream().filter(card -> isDue(card, origin)).forEach(this::write);
    }

    private static boolean isDue(Card card, Origin origin) {
        return TravellerDecider.decide(Optional.of(card.traveller()), card.procedure(),
                new TravellerCommand.Watch(origin)) instanceof Decision.Accepted<TravellerEvent> accepted
                && !accepted.events().isEmpty();
    }

    private void write(Card card) {
        try {
            transactions.run(SHOP, "watch", List.of(card.id()), (origin, now) -> new TravellerCommand.Watch(origin));
        } catch (NotStoredException lost) {
            LOG.warn("what is due on {} could not be written down yet: {}", card.id(), lost.getMessage());
        }
    }
}
