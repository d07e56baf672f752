package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.List;

/** The rules that a basket's own way has to keep: stations, holds, gaps, its session and its window. */
final class BasketRules {

    private final LineProblem problem;
    private final Basket basket;
    private final List<PlannedStage> planned;
    private final List<Violation> found;

    BasketRules(LineProblem problem, Basket basket, List<PlannedStage> planned, List<Violation> found) {
        this.problem = problem;
        this.basket = basket;
        this.planned = planned;
        this.found = found;
    }

    void check() {
        for (PlannedStage stage : planned) {
            station(stage);
            hold(stage);
        }
        start();
        for (int number = 1; number < planned.size(); number++) {
            gap(planned.get(number - 1), planned.get(number));
        }
        ready();
    }

    private Stage rule(PlannedStage stage) {
        return basket.stages().get(stage.number());
    }

    private void station(PlannedStage stage) {
        if (stage.number() == 0 && basket.progress() instanceof Progress.InStage begun) {
            if (!stage.station().equals(begun.at())) {
                found.add(new Violation.WrongStation(basket.label(), stage.step(), stage.station()));
            }
            return;
        }
        boolean moved = rule(stage).isAtStationBefore() && stage.number() > 0
                && !planned.get(stage.number() - 1).station().equals(stage.station());
        if (moved || !rule(stage).stations().contains(stage.station()) || !rule(stage).step().equals(stage.step())) {
            found.add(new Violation.WrongStation(basket.label(), stage.step(), stage.station()));
        } else if (problem.tank(stage.station()).isLocked()) {
            found.add(new Violation.StationLocked(basket.label(), stage.step(), stage.station()));
        }
    }

    private void hold(PlannedStage stage) {
        int seconds = stage.endSeconds() - stage.startSeconds();
        Stage rule = rule(stage);
        if (seconds < rule.holdMinSeconds()) {
            found.add(new Violation.HoldTooShort(basket.label(), stage.step(), seconds, rule.holdMinSeconds()));
        }
        if (rule.holdMaxSeconds().isPresent() && seconds > rule.holdMaxSeconds().getAsInt()) {
            found.add(new Violation.HoldTooLong(
                    basket.label(), stage.step(), seconds, rule.holdMaxSeconds().getAsInt()));
        }
    }

    private void start() {
        PlannedStage first = planned.getFirst();
        switch (basket.progress()) {
            case Progress.InStage begun -> {
                if (first.startSeconds() != begun.sinceSeconds() || first.endSeconds() < 0) {
                    found.add(new Violation.StartsTooEarly(
                            basket.label(), first.step(), first.startSeconds(), begun.sinceSeconds()));
                }
            }
            case Progress.Waiting waiting -> {
                int earliest = Math.max(0, basket.earliestStartSeconds())
                        + way(waiting.at(), first.station()) + rule(first).lowerSeconds();
                if (first.startSeconds() < earliest) {
                    found.add(new Violation.StartsTooEarly(
                            basket.label(), first.step(), first.startSeconds(), earliest));
                }
                waiting.latestStartSeconds().ifPresent(latest -> {
                    if (first.startSeconds() > latest) {
                        found.add(new Violation.StartsTooLate(
                                basket.label(), first.step(), first.startSeconds(), latest));
                    }
                });
            }
        }
    }

    private void gap(PlannedStage before, PlannedStage after) {
        int seconds = after.startSeconds() - before.endSeconds();
        int needed = rule(before).liftSeconds() + rule(before).dripSeconds()
                + way(before.station(), after.station()) + rule(after).lowerSeconds();
        if (seconds < needed) {
            found.add(new Violation.TransferTooFast(basket.label(), after.step(), seconds, needed));
        }
        if (rule(before).gapMaxSeconds().isPresent() && seconds > rule(before).gapMaxSeconds().getAsInt()) {
            found.add(new Violation.GapTooLong(
                    basket.label(), before.step(), seconds, rule(before).gapMaxSeconds().getAsInt()));
        }
    }

    private void ready() {
        Stage last = rule(planned.getLast());
        int ready = planned.getLast().endSeconds() + last.liftSeconds() + last.dripSeconds();
        if (problem.goal() instanceof Goal.ReadyBy by && problem.mayLeaveOut(basket) && ready > by.limitSeconds()) {
            found.add(new Violation.NotReadyBy(basket.label(), ready, by.limitSeconds()));
        }
        problem.sessionOf(basket).ifPresent(session -> {
            int due = session.startsSeconds() - session.readyBeforeSeconds();
            if (ready > due) {
                found.add(new Violation.NotReadyForSession(session.kit(), basket.label(), ready, due));
            }
            basket.window().ifPresent(window -> window(session, window));
        });
    }

    /** The shares used in each handling add up to no more than the whole, the margin counted in. */
    private void window(Session session, PartWindow window) {
        long opened = window.openedByStage().isPresent()
                ? planned.get(window.openedByStage().getAsInt()).endSeconds() : window.openedAtSeconds();
        long needed = (long) session.startsSeconds() + session.windowMarginSeconds();
        long inTheOpen = needed - opened;
        long left = window.openSeconds() - inTheOpen;
        if (window.sealedByStage().isPresent()) {
            long sealed = planned.get(window.sealedByStage().getAsInt()).endSeconds();
            inTheOpen = sealed - opened;
            long leftAtSealing = (window.openSeconds() - inTheOpen) * window.sealedSeconds();
            left = Math.floorDiv(leftAtSealing, window.openSeconds()) - (needed - sealed);
        }
        if (left < 0) {
            found.add(new Violation.WindowRunsOut(session.kit(), basket.label(), (int) -left));
        }
    }

    private int way(StationId from, StationId to) {
        return problem.walking().seconds(from, to);
    }
}
