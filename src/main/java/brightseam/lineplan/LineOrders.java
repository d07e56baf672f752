package brightseam.lineplan;

import brightseam.kernel.BadgeId;
import java.util.List;
import java.util.Optional;

/**
 * What the lead has said about the line: what it is planned for, and whose hands are there.
 *
 * @param aim what the plan is made for
 * @param hands who works at the line, sorted; none where nobody has been named
 */
public record LineOrders(Aim aim, List<BadgeId> hands) {

    /** Where nothing has been said. */
    public static final LineOrders NONE = new LineOrders(Aim.FOR_SESSIONS, List.of());

    /** Copies the list. */
    public LineOrders {
        hands = List.copyOf(hands);
    }

    /** The orders after {@code event}. */
    public static LineOrders evolve(Optional<LineOrders> before, LineOrderEvent event) {
        LineOrders was = before.orElse(NONE);
        return switch (event) {
            case LineOrderEvent.AimSet set -> new LineOrders(set.aim(), was.hands());
            case LineOrderEvent.HandsSet set -> new LineOrders(was.aim(), set.hands().stream().sorted().toList());
        };
    }
}
