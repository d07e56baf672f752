package brightseam.device.shell;

import brightseam.device.MeterEvent;
import brightseam.device.MeterRecord;
import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import java.util.Map;

/** The streams {@code meter/...}: what their events are called. A name is never given to another form. */
final class MeterStreams {

    static final Map<String, Class<? extends MeterEvent>> TYPES = Map.of(
            "meter-registered.1", MeterEvent.Registered.class,
            "meter-terms-changed.1", MeterEvent.TermsChanged.class,
            "meter-token-made.1", MeterEvent.TokenMade.class,
            "meter-reading-typed.1", MeterEvent.ReadingTyped.class,
            "meter-taken-out-of-use.1", MeterEvent.TakenOutOfUse.class,
            "meter-put-back-into-use.1", MeterEvent.PutBackIntoUse.class);

    static final StreamKind<MeterRecord, MeterEvent> KIND =
            new StreamKind<>("meter", new EventCodec<>(TYPES), MeterRecord::evolve);

    private MeterStreams() {}
}
