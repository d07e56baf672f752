package brightseam.traveller.shell;

import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.traveller.PartIdentity;
import java.util.Optional;

/**
 * One lot to be released.
 *
 * @param kit which kit it belongs to
 * @param part what the pieces are
 * @param quantity how many, from 1
 * @param heat of which heat
 * @param procedure the name of the procedure
 * @param revision the letter of an approved revision, where it is not to be the last one, as to end a kit on the
 *     revision that it was begun on; that revision is pinned
 */
public record ReleaseOrder(KitId kit, PartIdentity part, int quantity, HeatId heat, String procedure,
        Optional<String> revision) {

    /** By the last approved revision. */
    public ReleaseOrder(KitId kit, PartIdentity part, int quantity, HeatId heat, String procedure) {
        this(kit, part, quantity, heat, procedure, Optional.empty());
    }
}
