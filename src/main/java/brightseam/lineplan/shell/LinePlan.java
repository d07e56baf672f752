package brightseam.lineplan.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.Rules;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.lineplan.Aim;
import brightseam.lineplan.LineOrderEvent;
import brightseam.lineplan.LineOrderRefusal;
import brightseam.lineplan.LineOrders;
import brightseam.lineplan.PlanStanding;
import brightseam.ledger.Versioned;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/**
 * The plan of the cleaning line as it stands. It is made while somebody looks at it, and made anew within a second or
 * two when something is stored that bears on it, and when something that was planned has not been done.
 */
@Service
public class LinePlan {

    /** More pairs of hands than these are not planned in a second. */
    public static final int HANDS_MAX = 6;

    private final EventStream<LineOrders, LineOrderEvent> orders;
    private final LineNow line;
    private final Planning planning;

    LinePlan(Ledger ledger, LineNow line, Planning planning) {
        this.orders = new EventStream<>(ledger, LineOrderStreams.KIND);
        this.line = line;
        this.planning = planning;
    }

    /** What the lead has said. */
    public LineOrders orders() {
        return orders.load(LineOrderStreams.LINE).map(Versioned::state).orElse(LineOrders.NONE);
    }

    /** The plan as it was made last; empty before the first one, and where nothing is on the line. */
    public Optional<PlanStanding> current() {
        return planning.current();
    }

    /** Whether a plan is being made. */
    public boolean isPlanning() {
        return planning.isBusy();
    }

    /** The plan for another aim, without setting it; takes up to two seconds. */
    public PlanStanding whatIf(Aim aim) {
        return planning.solve(line.read(new LineOrders(aim, orders().hands())), Optional.empty(), better -> { });
    }

    /** Calls {@code changed} after every new plan, from now on until the answer is run; while anyone asks, it plans. */
    public Runnable follow(Runnable changed) {
        return planning.follow(this::orders, changed);
    }

    /**
     * Sets what the plan is made for.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed
     */
    public Outcome<LineOrders> aim(Origin origin, Aim aim) {
        return orders.execute(LineOrderStreams.LINE,
                before -> Decision.accepted(List.of(new LineOrderEvent.AimSet(origin, aim))));
    }

    /**
     * Sets whose hands are at the line; refuses none, too many, and people who are no fabricators.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed
     */
    public Outcome<LineOrders> hands(Origin origin, Collection<BadgeId> hands) {
        List<BadgeId> known = line.fabricators().stream().map(person -> person.badge()).toList();
        Rules rules = Rules.check().refuseIf(hands.isEmpty() || hands.size() > HANDS_MAX,
                () -> new LineOrderRefusal.HandsOutOfRange(hands.size(), HANDS_MAX));
        hands.stream().filter(badge -> !known.contains(badge)).forEach(badge ->
                rules.refuseIf(true, () -> new LineOrderRefusal.NotAFabricator(badge)));
        return orders.execute(LineOrderStreams.LINE, before -> rules.acceptWith(
                () -> List.of(new LineOrderEvent.HandsSet(origin, hands.stream().sorted().toList()))));
    }
}
