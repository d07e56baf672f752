package brightseam.weld.shell;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.weld.ChamberFact;
import java.util.List;
import java.util.Optional;

/** What joints ask of the chamber; whoever keeps the sessions implements it. */
public interface ChamberNow {

    /**
     * A chamber with what is in it.
     *
     * @param chamber the chamber
     * @param inside the travellers that were passed in and have not left, filler among them, sorted
     */
    record Inside(ChamberFact chamber, List<TravellerId> inside) {
        /** Copies the list. */
        public Inside {
            inside = List.copyOf(inside);
        }
    }

    /** The chamber that holds {@code kit} at {@code now}; empty where no open session does. */
    Optional<Inside> of(KitId kit, Moment now);
}
