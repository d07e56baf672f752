package brightseam.planner.shell;

import brightseam.kernel.StationId;
import brightseam.planner.Basket;
import brightseam.planner.Errand;
import brightseam.planner.Goal;
import brightseam.planner.LineProblem;
import brightseam.planner.PartWindow;
import brightseam.planner.Progress;
import brightseam.planner.Session;
import brightseam.planner.Stage;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is decided about one basket, with the rules of its own way: holds, gaps, carrying, session, window. */
final class BasketVariables {

    final Basket basket;
    final Literal present;
    final IntVar[] start;
    final IntVar[] end;
    final List<Map<StationId, Literal>> at = new ArrayList<>();
    final List<ErrandVariables> errands = new ArrayList<>();

    private final LineProblem problem;
    private final CpModel model;
    private final LinearArgument[] walk;
    private final long horizon;

    BasketVariables(CpModel model, LineProblem problem, Basket basket) {
        this.model = model;
        this.problem = problem;
        this.basket = basket;
        int stages = basket.stages().size();
        horizon = problem.horizonSeconds() + (problem.mayLeaveOut(basket) ? longest() : 0);
        present = problem.mayLeaveOut(basket) ? model.newBoolVar(basket.label()) : model.trueLiteral();
        start = new IntVar[stages];
        end = new IntVar[stages];
        walk = new LinearArgument[stages];
        for (int number = 0; number < stages; number++) {
            stage(number);
        }
        for (Errand errand : Errand.of(basket)) {
            errands.add(new ErrandVariables(model, this, errand, horizon));
        }
        begin();
        for (int number = 1; number < stages; number++) {
            transfer(number);
        }
        problem.sessionOf(basket).ifPresent(this::session);
        if (problem.goal() instanceof Goal.ReadyBy by && problem.mayLeaveOut(basket)) {
            model.addLessOrEqual(ready(), by.limitSeconds()).onlyEnforceIf(present);
        }
    }

    /** When the basket is ready. */
    LinearExpr ready() {
        return LinearExpr.affine(end[basket.last()], 1, basket.stages().getLast().clearSeconds());
    }

    /** The stations that an end of an errand may lie at, each with the literal that it does. */
    Map<StationId, Literal> places(int stage) {
        return stage < 0 ? Map.of(basket.progress().at(), model.trueLiteral()) : at.get(stage);
    }

    /** Hands' work before a stage: the way there from where the basket was. */
    LinearArgument walkTo(int stage) {
        return walk[stage];
    }

    private int longest() {
        return basket.stages().stream()
                .mapToInt(stage -> stage.holdMinSeconds() + stage.clearSeconds() + stage.lowerSeconds() + 600).sum();
    }

    private void stage(int number) {
        Stage rule = basket.stages().get(number);
        String name = basket.label() + "." + rule.step();
        boolean begun = number == 0 && basket.progress() instanceof Progress.InStage;
        if (begun) {
            Progress.InStage since = (Progress.InStage) basket.progress();
            start[0] = model.newConstant(since.sinceSeconds());
            at.add(Map.of(since.at(), model.trueLiteral()));
        } else {
            start[number] = model.newIntVar(0, horizon, name + ".start");
            at.add(stations(number, name));
        }
        end[number] = model.newIntVar(0, horizon, name + ".end");
        LinearExpr hold = LinearExpr.newBuilder().add(end[number]).addTerm(start[number], -1).build();
        boolean endsItself = number == basket.last() && (rule.isAttended() || rule.clearSeconds() == 0);
        if (endsItself && !begun) {
            model.addEquality(hold, rule.holdMinSeconds());
        } else {
            model.addGreaterOrEqual(hold, rule.holdMinSeconds());
            rule.holdMaxSeconds().ifPresent(most -> model.addLessOrEqual(hold, most));
        }
        walk[number] = begun ? LinearExpr.constant(0) : walk(number, name);
    }

    private Map<StationId, Literal> stations(int number, String name) {
        Stage rule = basket.stages().get(number);
        List<StationId> open = rule.stations().stream().filter(one -> !problem.tank(one).isLocked()).toList();
        Map<StationId, Literal> choice = new LinkedHashMap<>();
        if (number > 0 && rule.isAtStationBefore()) {
            at.get(number - 1).forEach((station, literal) -> {
                if (open.contains(station)) {
                    choice.put(station, literal);
                } else {
                    model.addImplication(present, literal.not());
                }
            });
        } else if (open.size() == 1) {
            choice.put(open.getFirst(), present);
        } else {
            open.forEach(station -> choice.put(station, model.newBoolVar(name + "@" + station)));
            LinearArgument[] all = choice.values().toArray(new LinearArgument[0]);
            model.addEquality(LinearExpr.sum(all), present);
        }
        return choice;
    }

    private LinearArgument walk(int number, String name) {
        Map<StationId, Literal> from = number == 0 ? places(-1) : at.get(number - 1);
        Map<StationId, Literal> to = at.get(number);
        boolean stays = number > 0 && basket.stages().get(number).isAtStationBefore();
        List<Integer> ways = new ArrayList<>();
        from.keySet().forEach(one -> to.keySet().stream().filter(other -> !stays || other.equals(one))
                .forEach(other -> ways.add(problem.walking().seconds(one, other))));
        if (ways.stream().distinct().count() <= 1) {
            return LinearExpr.constant(ways.isEmpty() ? 0 : ways.getFirst());
        }
        IntVar walked = model.newIntVar(0, ways.stream().mapToInt(one -> one).max().orElseThrow(), name + ".walk");
        from.forEach((one, here) -> to.forEach((other, there) ->
                model.addEquality(walked, problem.walking().seconds(one, other))
                        .onlyEnforceIf(new Literal[] {here, there})));
        return walked;
    }

    private void begin() {
        if (basket.progress() instanceof Progress.Waiting waiting) {
            int lower = basket.stages().getFirst().lowerSeconds();
            LinearExpr begins = LinearExpr.newBuilder().add(start[0]).addTerm(walk[0], -1).add(-lower).build();
            model.addGreaterOrEqual(begins, Math.max(0, basket.earliestStartSeconds()));
            waiting.latestStartSeconds().ifPresent(latest -> model.addLessOrEqual(start[0], latest));
        }
    }

    private void transfer(int number) {
        Stage before = basket.stages().get(number - 1);
        Stage rule = basket.stages().get(number);
        LinearExpr gap = LinearExpr.newBuilder().add(start[number]).addTerm(end[number - 1], -1).build();
        LinearExpr needed = LinearExpr.affine(walk[number], 1, before.clearSeconds() + rule.lowerSeconds());
        if (rule.waits()) {
            model.addGreaterOrEqual(gap, needed);
        } else {
            model.addEquality(gap, needed);
        }
        before.gapMaxSeconds().ifPresent(most -> model.addLessOrEqual(gap, most).onlyEnforceIf(present));
    }

    private void session(Session session) {
        model.addLessOrEqual(ready(), session.dueSeconds());
        basket.window().ifPresent(window -> window(session, window));
    }

    /** The shares, cleared of their denominators: whole seconds times whole seconds, well inside 64 bits. */
    private void window(Session session, PartWindow window) {
        long needed = (long) session.startsSeconds() + session.windowMarginSeconds();
        LinearArgument opened = window.openedByStage().isPresent()
                ? end[window.openedByStage().getAsInt()] : LinearExpr.constant(window.openedAtSeconds());
        if (window.sealedByStage().isEmpty()) {
            model.addGreaterOrEqual(opened, needed - window.openSeconds());
            return;
        }
        IntVar sealed = end[window.sealedByStage().getAsInt()];
        long open = window.openSeconds();
        long closed = window.sealedSeconds();
        model.addLessOrEqual(LinearExpr.newBuilder().addTerm(sealed, closed - open).addTerm(opened, -closed)
                .add(needed * open).build(), open * closed);
    }

    /** When a piece of an errand begins. */
    LinearExpr begins(Errand.Piece piece) {
        int number = piece.stage();
        return switch (piece.kind()) {
            case CARRY -> number > 0 ? LinearExpr.affine(end[number - 1], 1, 0)
                    : LinearExpr.newBuilder().add(start[0]).addTerm(walk[0], -1)
                            .add(-basket.stages().getFirst().lowerSeconds()).build();
            case LOWER -> LinearExpr.affine(start[number], 1, -basket.stages().get(number).lowerSeconds());
            case ATTEND -> number == 0 && basket.isInStage() ? LinearExpr.constant(0)
                    : LinearExpr.affine(start[number], 1, 0);
            case LIFT_OUT -> LinearExpr.affine(end[number], 1, 0);
        };
    }

    /** When a piece of an errand, its last one, ends. */
    LinearExpr ends(Errand.Piece piece) {
        int number = piece.stage();
        int clearBefore = number == 0 ? 0 : basket.stages().get(number - 1).clearSeconds();
        return switch (piece.kind()) {
            case CARRY -> LinearExpr.newBuilder().add(end[number - 1]).add(walk[number]).add(clearBefore).build();
            case LOWER -> LinearExpr.affine(start[number], 1, 0);
            case ATTEND -> LinearExpr.affine(end[number], 1, 0);
            case LIFT_OUT -> LinearExpr.affine(end[number], 1, basket.stages().get(number).clearSeconds());
        };
    }
}
