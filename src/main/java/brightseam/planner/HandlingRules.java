package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The rules for the hands on one basket: every lift, carry, lowering and attended hold has somebody's hands for its
 * whole time, and the basket leaves those hands only where it can stand.
 */
final class HandlingRules {

    private final LineProblem problem;
    private final Basket basket;
    private final List<PlannedStage> planned;
    private final List<Action> left;
    private final List<Violation> found;
    private Optional<BadgeId> holder = Optional.empty();

    HandlingRules(LineProblem problem, Basket basket, List<PlannedStage> planned, List<Action> actions,
            List<Violation> found) {
        this.problem = problem;
        this.basket = basket;
        this.planned = planned;
        this.left = new ArrayList<>(actions);
        this.found = found;
    }

    void check() {
        for (PlannedStage stage : planned) {
            boolean begun = stage.number() == 0 && basket.isInStage();
            if (!begun) {
                arrive(stage);
            }
            if (rule(stage).isAttended()) {
                need(stage, Action.Kind.ATTEND, stage.station(),
                        Math.max(0, stage.startSeconds()), stage.endSeconds());
            } else {
                holder = Optional.empty();
            }
        }
        PlannedStage last = planned.getLast();
        int clear = rule(last).liftSeconds() + rule(last).dripSeconds();
        if (clear > 0) {
            need(last, Action.Kind.LIFT_OUT, last.station(), last.endSeconds(), last.endSeconds() + clear);
        }
        left.forEach(action -> found.add(new Violation.NotAskedFor(basket.label(), action.stage())));
    }

    private void arrive(PlannedStage stage) {
        int lowering = stage.startSeconds() - rule(stage).lowerSeconds();
        if (stage.number() == 0) {
            StationId from = basket.progress().at();
            need(stage, Action.Kind.CARRY, from,
                    lowering - problem.walking().seconds(from, stage.station()), lowering);
        } else {
            PlannedStage before = planned.get(stage.number() - 1);
            int walked = before.endSeconds() + rule(before).liftSeconds() + rule(before).dripSeconds()
                    + problem.walking().seconds(before.station(), stage.station());
            if (rule(stage).waits()) {
                need(stage, Action.Kind.CARRY, before.station(), before.endSeconds(), walked);
                holder = Optional.empty();
            } else {
                need(stage, Action.Kind.CARRY, before.station(), before.endSeconds(), lowering);
            }
        }
        need(stage, Action.Kind.LOWER, stage.station(), lowering, stage.startSeconds());
    }

    private void need(PlannedStage stage, Action.Kind kind, StationId from, int fromSeconds, int untilSeconds) {
        Optional<Action> action = left.stream().filter(one -> one.kind() == kind && one.stage() == stage.number()
                && one.from().equals(from) && one.to().equals(stage.station())
                && one.startSeconds() == fromSeconds && one.endSeconds() == untilSeconds).findFirst();
        if (action.isEmpty()) {
            found.add(new Violation.NoHands(basket.label(), stage.step(), kind, fromSeconds, untilSeconds));
            return;
        }
        left.remove(action.get());
        BadgeId person = action.get().person();
        if (holder.isPresent() && !holder.get().equals(person)) {
            found.add(new Violation.HandedOver(basket.label(), stage.step(), holder.get(), person));
        }
        holder = Optional.of(person);
    }

    private Stage rule(PlannedStage stage) {
        return basket.stages().get(stage.number());
    }
}
