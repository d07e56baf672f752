package brightseam.planner;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which basket is where when, and whose hands do what.
 *
 * @param stages every stage, by start
 * @param actions everything that hands do, by start
 * @param leftOut labels of the baskets that are not in it
 */
public record Plan(List<PlannedStage> stages, List<Action> actions, Set<String> leftOut) {

    /** Copies and sorts. */
    public Plan {
        stages = stages.stream().sorted(Comparator.comparingInt(PlannedStage::startSeconds)
                .thenComparing(PlannedStage::basket).thenComparingInt(PlannedStage::number)).toList();
        actions = actions.stream().sorted(Comparator.comparingInt(Action::startSeconds)
                .thenComparingInt(Action::endSeconds).thenComparing(Action::basket)
                .thenComparingInt(Action::stage).thenComparing(Action::kind)).toList();
        leftOut = Set.copyOf(leftOut);
    }

    /** The same plan as it reads {@code seconds} later: every time that much nearer, what is past below zero. */
    public Plan seenLater(int seconds) {
        return new Plan(
                stages.stream().map(stage -> new PlannedStage(stage.basket(), stage.number(), stage.step(),
                        stage.station(), stage.startSeconds() - seconds, stage.endSeconds() - seconds)).toList(),
                actions.stream().map(action -> new Action(action.person(), action.basket(), action.kind(),
                        action.stage(), action.from(), action.to(), action.startSeconds() - seconds,
                        action.endSeconds() - seconds)).toList(),
                leftOut);
    }

    /** Where stage {@code number} of {@code basket} is planned, if it is. */
    public Optional<PlannedStage> stage(String basket, int number) {
        return stages.stream().filter(stage -> stage.number() == number && stage.basket().equals(basket)).findFirst();
    }
}
