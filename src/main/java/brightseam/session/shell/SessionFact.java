package brightseam.session.shell;

import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.session.ArgonFact;
import brightseam.session.GasLimits;
import brightseam.session.Item;
import brightseam.session.Phase;
import java.util.List;
import java.util.Optional;

/**
 * A session as whoever welds in it has to know it.
 *
 * @param session its name
 * @param kit what is welded
 * @param chamber where
 * @param lock the chamber's transfer lock
 * @param phase where it is in its life
 * @param unfit why no arc may be struck by the gas now; empty where it is fit to weld
 * @param limits what the gas has to keep to; empty before the purge
 * @param argon what was connected when the purge began; empty before
 * @param connected the supply that is connected now, with its lot
 * @param oxygenMeter the meter that proves the joints
 * @param moistureMeter likewise, where one is registered
 * @param inside the travellers inside, filler among them, sorted
 * @param things everything inside, in the order of the scans
 */
public record SessionFact(SessionId session, KitId kit, StationId chamber, Optional<StationId> lock, Phase phase,
        List<Refusal> unfit, Optional<GasLimits> limits, Optional<ArgonFact> argon, Optional<ArgonFact> connected,
        Optional<SupplyId> oxygenMeter, Optional<SupplyId> moistureMeter, List<TravellerId> inside,
        List<Item> things) {

    /** Copies the lists. */
    public SessionFact {
        unfit = List.copyOf(unfit);
        inside = List.copyOf(inside);
        things = List.copyOf(things);
    }

    /** Whether the readings say now that the gas is fit to weld. */
    public boolean isFit() {
        return unfit.isEmpty();
    }
}
