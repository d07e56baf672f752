package brightseam.lineplan;

import brightseam.kernel.Moment;
import brightseam.planner.Action;
import brightseam.planner.Answer;
import brightseam.planner.Plan;
import brightseam.planner.PlannedStage;
import brightseam.procedure.Step;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A plan with the situation that it was made from.
 *
 * @param situation how the line stood
 * @param answer what came of planning
 * @param instead where the sessions left no plan: what to go by meanwhile, sessions left aside
 */
public record PlanStanding(LineSituation situation, Answer answer, Optional<Answer.Planned> instead) {

    /** How late something planned may be before the plan is made anew. */
    private static final Duration LATE = Duration.ofSeconds(15);

    /** What came of planning, with nothing instead. */
    public PlanStanding(LineSituation situation, Answer answer) {
        this(situation, answer, Optional.empty());
    }

    /** The plan to go by, where there is one. */
    public Optional<Plan> plan() {
        return answer instanceof Answer.Planned planned ? Optional.of(planned.plan())
                : instead.map(Answer.Planned::plan);
    }

    /** The plan to go by as it reads at {@code later}, for the planner to start from. */
    public Optional<Plan> planSeenAt(Moment later) {
        return plan().map(plan -> plan.seenLater((int) later.since(situation.at()).toSeconds()));
    }

    /** The moment that second {@code seconds} of the plan is. */
    public Moment at(int seconds) {
        return situation.at().plus(Duration.ofSeconds(seconds));
    }

    /** The step that a stage of the plan is. */
    public Step step(PlannedStage stage) {
        return situation.load(stage.basket()).orElseThrow().steps().get(stage.number());
    }

    /** What is still to be carried, soonest first. */
    public List<Move> moves() {
        return plan().map(plan -> plan.actions().stream()
                .filter(action -> action.kind() == Action.Kind.CARRY || action.kind() == Action.Kind.LIFT_OUT)
                .map(action -> move(plan, action))
                .sorted(Comparator.comparing(Move::takenAt).thenComparing(Move::load)).toList()).orElse(List.of());
    }

    private Move move(Plan plan, Action action) {
        boolean off = action.kind() == Action.Kind.LIFT_OUT;
        Optional<PlannedStage> into = off ? Optional.empty() : plan.stage(action.basket(), action.stage());
        return new Move(action.basket(), into.map(this::step), action.from(), action.to(), action.person(),
                at(action.startSeconds()), into.map(stage -> at(stage.startSeconds()))
                        .orElseGet(() -> at(action.endSeconds())));
    }

    /** Whether something that was planned for later than the situation should have happened by {@code now}. */
    public boolean isOverdue(Moment now) {
        return moves().stream().filter(move -> move.takenAt().isAfter(situation.at()))
                .anyMatch(move -> now.isAfter(move.takenAt().plus(LATE)));
    }
}
