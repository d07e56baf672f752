package brightseam.weld;

import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import brightseam.people.Signer;

/** What happened to one weld map. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface WeldMapEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Whose map. */
    KitId kit();

    /** It was begun. */
    record Begun(Origin origin, KitId kit, MapSheet sheet) implements WeldMapEvent {}

    /** It was drawn anew. */
    record Redrawn(Origin origin, KitId kit, MapSheet sheet) implements WeldMapEvent {}

    /** A joint was put at another place of the picture. */
    record JointMoved(Origin origin, KitId kit, String number, Spot spot) implements WeldMapEvent {}

    /** What was drawn last was issued. */
    record Issued(Origin origin, KitId kit, int issue, Signer signer) implements WeldMapEvent {}
}
