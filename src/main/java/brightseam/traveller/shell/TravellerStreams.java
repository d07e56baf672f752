package brightseam.traveller.shell;

import brightseam.ledger.shell.StreamKind;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import java.util.List;

/** The streams {@code traveller/...}. */
final class TravellerStreams {

    static final StreamKind<Traveller, TravellerEvent> KIND = new StreamKind<>("traveller", TravellerEvents.codec(),
            (before, event) -> before.map(state -> state.after(List.of(event)))
                    .orElseGet(() -> Traveller.fold(List.of(event)).orElseThrow()));

    private TravellerStreams() {}
}
