package brightseam.line.shell;

import brightseam.ledger.Entry;
import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.line.Bath;
import brightseam.line.BathEvent;
import java.util.Map;

/** The streams {@code bath/...}: what their events are called. A name is never given to another form. */
final class BathStreams {

    static final Map<String, Class<? extends BathEvent>> TYPES = Map.of(
            "bath-registered.1", BathEvent.Registered.class,
            "bath-terms-changed.1", BathEvent.TermsChanged.class,
            "bath-made-up.1", BathEvent.MadeUp.class,
            "bath-analysed.1", BathEvent.Analysed.class,
            "bath-added-to.1", BathEvent.Added.class,
            "bath-load-taken-in.1", BathEvent.TakenIn.class,
            "bath-locked.1", BathEvent.Locked.class,
            "bath-unlocked.1", BathEvent.Unlocked.class,
            "bath-suspects-named.1", BathEvent.SuspectsNamed.class);

    static final StreamKind<Bath, BathEvent> KIND = new StreamKind<>("bath", new EventCodec<>(TYPES), Bath::evolve);

    private BathStreams() {}

    /** Whether {@code entry} is one of these events. */
    static boolean isMine(Entry entry) {
        return entry.stream().family().equals(KIND.family()) && KIND.codec().knows(entry.type());
    }
}
