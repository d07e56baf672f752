package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** A shop some time later, everything having gone as planned until then. */
public final class LaterOn {

    private final LineProblem problem;
    private final Plan plan;
    private final int now;

    private LaterOn(LineProblem problem, Plan plan, int now) {
        this.problem = problem;
        this.plan = plan;
        this.now = now;
    }

    /** The first second at or after {@code seconds} at which nobody has anything in hand. */
    public static int quiet(Plan plan, int seconds) {
        int now = seconds;
        while (isBusy(plan, now)) {
            now++;
        }
        return now;
    }

    private static boolean isBusy(Plan plan, int now) {
        return plan.actions().stream().anyMatch(one -> one.startSeconds() < now && one.endSeconds() > now)
                || plan.actions().stream().anyMatch(one -> one.endSeconds() == now && plan.actions().stream()
                        .anyMatch(other -> other.basket().equals(one.basket()) && other.startSeconds() == now
                                && other != one && other.person().equals(one.person())));
    }

    /** The problem as it is at {@code now}, a quiet second. */
    public static LineProblem problem(LineProblem problem, Plan plan, int now) {
        return new LaterOn(problem, plan, now).problem();
    }

    /** The same {@code seconds} later, nothing having been done meanwhile. */
    public static LineProblem idle(LineProblem problem, int seconds) {
        return new LaterOn(problem, new Plan(List.of(), List.of(), Set.of()), seconds).idle();
    }

    private LineProblem idle() {
        return withLaterTimes(problem.withBaskets(problem.baskets().stream().map(basket -> new Basket(basket.label(),
                basket.kit(), switch (basket.progress()) {
                    case Progress.InStage begun -> new Progress.InStage(begun.at(), begun.sinceSeconds() - now);
                    case Progress.Waiting waiting -> new Progress.Waiting(waiting.at(),
                            waiting.latestStartSeconds().isEmpty() ? waiting.latestStartSeconds()
                                    : OptionalInt.of(waiting.latestStartSeconds().getAsInt() - now));
                }, basket.earliestStartSeconds() - now, basket.stages(), basket.window())).toList()));
    }

    private LineProblem withLaterTimes(LineProblem other) {
        return other.withHands(problem.hands().stream().map(this::left).toList())
                .withSessions(problem.sessions().stream().map(session -> new Session(session.kit(),
                        session.startsSeconds() - now, session.readyBeforeSeconds(),
                        session.windowMarginSeconds())).toList());
    }

    private LineProblem problem() {
        List<Basket> baskets = new ArrayList<>();
        problem.baskets().forEach(basket -> left(basket).ifPresent(baskets::add));
        return withLaterTimes(problem.withBaskets(baskets));
    }

    private Optional<Basket> left(Basket basket) {
        int open = 0;
        while (open <= basket.last() && stage(basket, open).endSeconds() <= now && !isInTank(basket, open)) {
            open++;
        }
        if (open > basket.last()) {
            return Optional.empty();
        }
        int number = open;
        Optional<PartWindow> window = basket.window().map(one -> later(basket, one, number));
        return Optional.of(new Basket(basket.label(), basket.kit(), progress(basket, open),
                basket.earliestStartSeconds() - now, basket.stages().subList(open, basket.last() + 1), window));
    }

    private boolean isInTank(Basket basket, int number) {
        return stage(basket, number).endSeconds() == now && !basket.stages().get(number).isAttended();
    }

    private Progress progress(Basket basket, int open) {
        PlannedStage stage = stage(basket, open);
        if (stage.startSeconds() <= now) {
            return new Progress.InStage(stage.station(), stage.startSeconds() - now);
        }
        if (open == 0) {
            return basket.progress();
        }
        StationId at = stage.station();
        OptionalInt gap = basket.stages().get(open - 1).gapMaxSeconds();
        return new Progress.Waiting(at, gap.isEmpty() ? gap
                : OptionalInt.of(stage(basket, open - 1).endSeconds() + gap.getAsInt() - now));
    }

    private PartWindow later(Basket basket, PartWindow window, int open) {
        int opened = window.openedByStage().getAsInt();
        return new PartWindow(opened < open ? OptionalInt.empty() : OptionalInt.of(opened - open),
                stage(basket, opened).endSeconds() - now, window.openSeconds(),
                OptionalInt.of(window.sealedByStage().getAsInt() - open), window.sealedSeconds());
    }

    private Hands left(Hands hands) {
        List<Shift> shifts = hands.shifts().stream().filter(shift -> shift.untilSeconds() > now)
                .map(shift -> new Shift(shift.fromSeconds() - now, shift.untilSeconds() - now)).toList();
        return new Hands(hands.person(), shifts, plan.actions().stream()
                .filter(action -> action.person().equals(hands.person()) && action.endSeconds() <= now)
                .map(Action::to).reduce((one, last) -> last).or(hands::at));
    }

    private PlannedStage stage(Basket basket, int number) {
        return plan.stage(basket.label(), number).orElseThrow();
    }
}
