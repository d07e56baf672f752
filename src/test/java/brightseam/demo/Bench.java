package brightseam.demo;

import brightseam.browser.ShopServer;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import java.util.List;
import java.util.Optional;

/** What the demo's fabricator does by hand in tests of the shop's services, and what comes of it. */
final class Bench {

    private Bench() {}

    /** Begins {@code step} of {@code load}: cautions read, gloves on, everything scanned that is asked for. */
    static Outcome<List<Traveller>> start(ShopServer shop, List<TravellerId> load, StepId step, StationId station) {
        List<Card> cards = load.stream().map(id -> shop.bean(Travellers.class).find(id).orElseThrow()).toList();
        return shop.bean(TravellerActions.class).startStep(shop.bean(Crew.class).actor(DemoPerson.ILKA_FERROW), load,
                step, Optional.of(station), true, true,
                shop.bean(Cupboard.class).take(cards.getFirst().procedure().step(step), cards));
    }

    /** Why it was refused; nothing where it was not. */
    static List<Refusal> refused(Outcome<?> outcome) {
        return outcome instanceof Outcome.Refused<?> refused ? refused.refusals() : List.of();
    }

    /** The names of the rules that refused it. */
    static List<String> codes(Outcome<?> outcome) {
        return refused(outcome).stream().map(Refusal::code).toList();
    }
}
