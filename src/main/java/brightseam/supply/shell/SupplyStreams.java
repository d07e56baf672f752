package brightseam.supply.shell;

import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.supply.Supply;
import brightseam.supply.SupplyEvent;
import java.util.Map;

/** The streams {@code supply/...}: what their events are called. A name is never given to another form. */
final class SupplyStreams {

    static final Map<String, Class<? extends SupplyEvent>> TYPES = Map.of(
            "supply-registered.1", SupplyEvent.Registered.class,
            "supply-opened.1", SupplyEvent.Opened.class,
            "supply-contaminated.1", SupplyEvent.Contaminated.class,
            "supply-made-clean.1", SupplyEvent.MadeClean.class,
            "supply-calibrated.1", SupplyEvent.Calibrated.class,
            "supply-used-up.1", SupplyEvent.UsedUp.class,
            "supply-retired.1", SupplyEvent.Retired.class);

    static final StreamKind<Supply, SupplyEvent> KIND =
            new StreamKind<>("supply", new EventCodec<>(TYPES), Supply::evolve);

    private SupplyStreams() {}
}
