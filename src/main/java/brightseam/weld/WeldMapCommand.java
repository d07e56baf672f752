package brightseam.weld;

import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import brightseam.people.Signer;

/** What can be asked of the weld map of one kit. */
public sealed interface WeldMapCommand {

    /** Whose map. */
    KitId kit();

    /** When, by whom and where. */
    Origin origin();

    /** Puts {@code sheet} in the place of what was drawn so far, or begins the map with it. */
    record DrawMap(KitId kit, MapSheet sheet, Origin origin) implements WeldMapCommand {}

    /** Puts a joint of the draft at another place of the picture. */
    record MoveJoint(KitId kit, String number, Spot spot, Origin origin) implements WeldMapCommand {}

    /** Issues the draft: from now on joints are welded to it. */
    record IssueMap(KitId kit, MapFacts facts, Signer signer, Origin origin) implements WeldMapCommand {}
}
