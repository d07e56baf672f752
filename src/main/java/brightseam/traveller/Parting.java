package brightseam.traveller;

import brightseam.procedure.Procedure;
import brightseam.traveller.TravellerCommand.TakeOut;
import brightseam.traveller.TravellerEvent.PiecesSetApart;
import brightseam.traveller.TravellerEvent.SetApart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the first events of a traveller that was set apart. */
public final class Parting {

    private Parting() {}

    /**
     * The first event of the child that {@code decided} sets apart; empty where it sets nothing apart.
     *
     * @param stored every event of the parent that is in the ledger
     * @param decided what the decider answered, which may begin with what time alone has brought about
     */
    public static Optional<SetApart> child(List<TravellerEvent> stored, List<TravellerEvent> decided) {
        for (int i = 0; i < decided.size(); i++) {
            if (decided.get(i) instanceof PiecesSetApart parting) {
                List<TravellerEvent> history = new ArrayList<>(stored);
                history.addAll(decided.subList(0, i));
                return Optional.of(child(Traveller.fold(history).orElseThrow(), history, parting));
            }
        }
        return Optional.empty();
    }

    /**
     * What follows for the child of a {@code takeOut} that {@code decided} sets apart: out of the bath, reported, and
     * into its own bin; empty where nothing is set apart.
     */
    public static List<TravellerEvent> leaving(SetApart first, Procedure procedure, TakeOut takeOut) {
        return new TakeOutRules(Traveller.fold(List.of(first)).orElseThrow(), procedure).leaving(takeOut);
    }

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
