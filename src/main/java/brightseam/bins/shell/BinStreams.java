package brightseam.bins.shell;

import brightseam.bins.Bin;
import brightseam.bins.BinEvent;
import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import java.util.Map;

/**
 * The streams {@code bin/...}: what their events are called, unlike what a traveller notes of its bin. A name is never
 * given to another form.
 */
final class BinStreams {

    static final Map<String, Class<? extends BinEvent>> TYPES = Map.of(
            "bin-registered.1", BinEvent.Registered.class,
            "bin-capacity-set.1", BinEvent.CapacitySet.class,
            "bin-traveller-put-in.1", BinEvent.PutIn.class,
            "bin-traveller-taken-out.1", BinEvent.TakenOut.class,
            "bin-closed-up.1", BinEvent.Closed.class,
            "bin-opened-up.1", BinEvent.Opened.class,
            "bin-soiled.1", BinEvent.Soiled.class,
            "bin-cleaned.1", BinEvent.Cleaned.class,
            "bin-retired.1", BinEvent.Retired.class);

    static final StreamKind<Bin, BinEvent> KIND = new StreamKind<>("bin", new EventCodec<>(TYPES), Bin::evolve);

    private BinStreams() {}
}
