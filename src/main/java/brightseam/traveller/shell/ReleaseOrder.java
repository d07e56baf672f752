package brightseam.traveller.shell;

import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.traveller.PartIdentity;

/**
 * One lot to be released.
 *
 * @param kit which kit it belongs to
 * @param part what the pieces are
 * @param quantity how many, from 1
 * @param heat of which heat
 * @param procedure the name of the procedure; its last approved revision is pinned
 */
public record ReleaseOrder(KitId kit, PartIdentity part, int quantity, HeatId heat, String procedure) {}
