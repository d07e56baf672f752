package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** The demands of a problem, and the problem without some of them. */
public final class Demands {

    /** Longer than any plan: seven days. */
    private static final int OVERTIME_SECONDS = 7 * 24 * 3600;

    private Demands() {}

    /** Every demand of {@code problem}, those first that people would rather have named. */
    public static List<Demand> of(LineProblem problem) {
        List<Demand> demands = new ArrayList<>();
        problem.baskets().forEach(basket -> holds(basket, demands));
        problem.tanks().forEach(tank -> demands.add(new Demand.TankRoom(tank.id(), tank.capacityBaskets())));
        demands.add(new Demand.PairsOfHands(problem.hands().size()));
        for (Basket basket : problem.baskets()) {
            problem.sessionOf(basket).filter(session -> basket.window().isPresent())
                    .ifPresent(session -> demands.add(new Demand.WindowOpen(session.kit(), basket.label())));
        }
        problem.tanks().stream().filter(Tank::isLocked)
                .forEach(tank -> demands.add(new Demand.TankLocked(tank.id())));
        problem.hands().forEach(one -> demands.add(new Demand.ShiftEnds(one.person(), one.lastSecond())));
        problem.sessions().stream()
                .filter(session -> problem.baskets().stream()
                        .anyMatch(basket -> problem.sessionOf(basket).filter(session::equals).isPresent()))
                .forEach(session -> demands.add(new Demand.SessionDue(session.kit(), session.dueSeconds())));
        return List.copyOf(demands);
    }

    private static void holds(Basket basket, List<Demand> demands) {
        if (basket.progress() instanceof Progress.Waiting waiting) {
            waiting.latestStartSeconds().ifPresent(latest -> demands.add(new Demand.GapRunning(
                    basket.label(), basket.stages().getFirst().step(), latest)));
        }
        for (Stage stage : basket.stages()) {
            stage.holdMaxSeconds().ifPresent(
                    most -> demands.add(new Demand.HoldMaximum(basket.label(), stage.step(), most)));
            stage.gapMaxSeconds().ifPresent(
                    most -> demands.add(new Demand.GapMaximum(basket.label(), stage.step(), most)));
        }
    }

    /**
     * {@code problem} without {@code dropped}. That hands do one thing at a time cannot be taken out of a problem's
     * data; who solves it looks for {@link Demand.PairsOfHands} in {@code dropped}.
     */
    public static LineProblem without(LineProblem problem, Set<Demand> dropped) {
        Set<StationId> roomy = new HashSet<>();
        Set<StationId> open = new HashSet<>();
        Set<Object> overtime = new HashSet<>();
        Set<Object> undue = new HashSet<>();
        for (Demand demand : dropped) {
            switch (demand) {
                case Demand.TankRoom room -> roomy.add(room.station());
                case Demand.TankLocked locked -> open.add(locked.station());
                case Demand.ShiftEnds ends -> overtime.add(ends.person());
                case Demand.SessionDue due -> undue.add(due.kit());
                case Demand.HoldMaximum ignored -> { }
                case Demand.GapMaximum ignored -> { }
                case Demand.GapRunning ignored -> { }
                case Demand.WindowOpen ignored -> { }
                case Demand.PairsOfHands ignored -> { }
            }
        }
        int count = problem.baskets().size();
        return problem
                .withTanks(problem.tanks().stream().map(tank -> new Tank(tank.id(),
                        roomy.contains(tank.id()) ? tank.capacityBaskets() + 2 * count : tank.capacityBaskets(),
                        tank.isLocked() && !open.contains(tank.id()))).toList())
                .withHands(problem.hands().stream()
                        .map(one -> overtime.contains(one.person()) ? staying(one) : one).toList())
                .withSessions(problem.sessions().stream()
                        .map(session -> undue.contains(session.kit()) ? undue(session) : session).toList())
                .withBaskets(problem.baskets().stream().map(basket -> without(basket, dropped)).toList());
    }

    private static Basket without(Basket basket, Set<Demand> dropped) {
        List<Stage> stages = new ArrayList<>();
        for (Stage stage : basket.stages()) {
            Stage freed = stage;
            if (dropped.contains(new Demand.HoldMaximum(
                    basket.label(), stage.step(), stage.holdMaxSeconds().orElse(0)))) {
                freed = freed.withHoldMax(OptionalInt.empty());
            }
            if (dropped.contains(new Demand.GapMaximum(
                    basket.label(), stage.step(), stage.gapMaxSeconds().orElse(0)))) {
                freed = freed.withGapMax(OptionalInt.empty());
            }
            stages.add(freed);
        }
        boolean noGap = dropped.stream().anyMatch(
                one -> one instanceof Demand.GapRunning gap && gap.basket().equals(basket.label()));
        boolean noWindow = dropped.stream().anyMatch(
                one -> one instanceof Demand.WindowOpen open && open.basket().equals(basket.label()));
        Basket freed = basket.withStages(stages).withWindow(noWindow ? Optional.empty() : basket.window());
        return noGap ? freed.withProgress(Progress.waitingAt(basket.progress().at())) : freed;
    }

    private static Hands staying(Hands one) {
        List<Shift> shifts = new ArrayList<>(one.shifts());
        int from = shifts.isEmpty() ? 0 : shifts.removeLast().fromSeconds();
        shifts.add(new Shift(from, Math.max(0, one.lastSecond()) + OVERTIME_SECONDS));
        return new Hands(one.person(), shifts, one.at());
    }

    /** A session that is due never, with its window margins measured from the same start. */
    private static Session undue(Session session) {
        return new Session(session.kit(), session.startsSeconds(),
                session.readyBeforeSeconds() - OVERTIME_SECONDS, session.windowMarginSeconds());
    }
}
