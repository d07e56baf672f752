package brightseam.traveller.shell;

import brightseam.kernel.Decision;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Append;
import brightseam.ledger.Prepared;
import brightseam.traveller.Parting;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerCommand;
import brightseam.traveller.TravellerEvent;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;

/** Stores that pieces leave their lot and go on as a traveller of their own: both records in one append. */
@Component
class Partings {

    private final Travellers travellers;

    Partings(Travellers travellers) {
        this.travellers = travellers;
    }

    /**
     * What {@code decided} stores on {@code parent} and, as its result, on the child that it sets apart.
     *
     * @param command what was decided; where it takes pieces out, what follows for them is stored too
     */
    Prepared<Traveller> prepare(Card parent, List<TravellerEvent> decided, TravellerCommand command) {
        List<TravellerEvent> stored = travellers.record(parent.id()).stream()
                .map(RecordedEvent::event).limit(parent.version()).toList();
        TravellerEvent.SetApart first = Parting.child(stored, decided).orElseThrow();
        List<TravellerEvent> own = new ArrayList<>(List.of(first));
        if (command instanceof TravellerCommand.TakeOut takeOut) {
            own.addAll(Parting.leaving(first, parent.procedure(), takeOut));
        }
        return stored(parent, decided).with(
                travellers.streams().prepare(first.traveller(), none -> Decision.accepted(own)),
                (before, child) -> child);
    }

    /** What {@code decided} stores on {@code card} alone. */
    static Prepared<Traveller> stored(Card card, List<TravellerEvent> decided) {
        return new Prepared.Ready<>(List.of(new Append(
                TravellerStreams.KIND.stream(card.id()), card.version(), TravellerStreams.KIND.write(decided))),
                card.traveller().after(decided));
    }

    /** The first label of {@code id} with a number behind it that is free. */
    TravellerId freeLabel(TravellerId id) {
        for (int n = 1; ; n++) {
            TravellerId label = new TravellerId(id.value() + "." + n);
            if (travellers.find(label).isEmpty()) {
                return label;
            }
        }
    }
}
