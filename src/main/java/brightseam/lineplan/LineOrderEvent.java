package brightseam.lineplan;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import java.util.List;

/** What the lead said about the line. */
public sealed interface LineOrderEvent {

    /** When, by whom. */
    Origin origin();

    /** What the plan is made for. */
    record AimSet(Origin origin, Aim aim) implements LineOrderEvent {}

    /** Who works at the line from now on. */
    record HandsSet(Origin origin, List<BadgeId> hands) implements LineOrderEvent {}
}
