package brightseam.lineplan;

import brightseam.kernel.TravellerId;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.traveller.Traveller;
import java.util.List;

/**
 * What goes through the line together.
 *
 * @param label the bin that it lies in, or the traveller's label where it lies in none or not with the others
 * @param lots what it holds, at least one, all at the same step
 * @param steps the step in progress or next, and all that follow on the line
 */
public record LineLoad(String label, List<Lot> lots, List<Step> steps) {

    /** A traveller with the revision that it follows. */
    public record Lot(Traveller traveller, Procedure procedure) {}

    /** Copies the lists; refuses a load of nothing and one with nothing left to do. */
    public LineLoad {
        lots = List.copyOf(lots);
        steps = List.copyOf(steps);
        if (lots.isEmpty() || steps.isEmpty()) {
            throw new IllegalArgumentException(label + ": nothing to plan");
        }
    }

    /** The one that stands for all. */
    Lot first() {
        return lots.getFirst();
    }

    /** Their labels. */
    public List<TravellerId> travellers() {
        return lots.stream().map(lot -> lot.traveller().id()).toList();
    }
}
