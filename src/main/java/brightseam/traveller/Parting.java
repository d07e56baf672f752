package brightseam.traveller;

import brightseam.traveller.TravellerEvent.PiecesSetApart;
import brightseam.traveller.TravellerEvent.SetApart;
import java.util.List;

/** Makes the first event of a traveller that was set apart. */
public final class Parting {

    private Parting() {}

    /**
     * The child's first event.
     *
     * @param parent the parent before {@code parting}
     * @param history every event of the parent before {@code parting}, which becomes the child's too
     * @param parting what was decided on the parent
     */
    public static SetApart child(Traveller parent, List<TravellerEvent> history, PiecesSetApart parting) {
        return new SetApart(parting.origin(), parting.child(), parent.id(), history.size(), parting.pieces(),
                parting.reason(), parting.signature(), history);
    }
}
