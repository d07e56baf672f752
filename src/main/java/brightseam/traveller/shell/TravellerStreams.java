package brightseam.traveller.shell;

import brightseam.ledger.shell.StreamKind;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import java.util.List;

/** The streams {@code traveller/...}, for projections of other features too; only this package appends to them. */
public final class TravellerStreams {

    /** Their name, the written forms of their events, and how they fold. */
    public static final StreamKind<Traveller, TravellerEvent> KIND = new StreamKind<>("traveller",
            TravellerEvents.codec(), (before, event) -> before.map(state -> state.after(List.of(event)))
                    .orElseGet(() -> Traveller.fold(List.of(event)).orElseThrow()));

    private TravellerStreams() {}
}
