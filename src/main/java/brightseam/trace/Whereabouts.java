package brightseam.trace;

import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.traveller.PartIdentity;
import brightseam.traveller.Phase;
import brightseam.traveller.Placement;
import brightseam.traveller.Traveller;
import java.util.List;
import java.util.Optional;

/**
 * Where the pieces of a traveller are now.
 *
 * @param traveller its label
 * @param parent the traveller that it was set apart from, where it was
 * @param kit the kit that it belongs to
 * @param heat their heat
 * @param part what the pieces are
 * @param pieces numbers of the pieces that are left, ascending
 * @param phase where it is in its life
 * @param quarantine whether a nonconformance is open
 * @param suspect whether suspicion is among what is open
 * @param bin the bin that they are in; empty once nothing more is done with them
 * @param step the step at hand; empty where all are signed
 */
public record Whereabouts(TravellerId traveller, Optional<TravellerId> parent, KitId kit, HeatId heat,
        PartIdentity part, List<Integer> pieces, Phase phase, boolean quarantine, boolean suspect,
        Optional<Placement> bin, Optional<StepId> step) {

    /** Copies the pieces. */
    public Whereabouts {
        pieces = List.copyOf(pieces);
    }

    /** Where {@code traveller} is. */
    public static Whereabouts of(Traveller traveller) {
        boolean taken = traveller.phase() == Phase.CLOSED || traveller.phase() == Phase.SCRAPPED;
        return new Whereabouts(traveller.id(), traveller.parent(), traveller.kit(), traveller.heat(), traveller.part(),
                traveller.pieces(), traveller.phase(), traveller.isInQuarantine(), traveller.isSuspect(),
                taken ? Optional.empty() : traveller.placement(),
                traveller.phase() == Phase.SCRAPPED ? Optional.empty() : traveller.currentStep());
    }
}
