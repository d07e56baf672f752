package brightseam.lineplan.shell;

import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.lineplan.LineOrderEvent;
import brightseam.lineplan.LineOrders;
import java.util.Map;

/** The stream {@code line-orders/LINE}: what its events are called. A name is never given to another form. */
final class LineOrderStreams {

    static final Map<String, Class<? extends LineOrderEvent>> TYPES = Map.of(
            "line-aim-set.1", LineOrderEvent.AimSet.class,
            "line-hands-set.1", LineOrderEvent.HandsSet.class);

    static final StreamKind<LineOrders, LineOrderEvent> KIND =
            new StreamKind<>("line-orders", new EventCodec<>(TYPES), LineOrders::evolve);

    static final String LINE = "LINE";

    private LineOrderStreams() {}
}
