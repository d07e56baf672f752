package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.procedure.Gap;
import brightseam.procedure.Hold;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import java.util.List;
import java.util.Optional;

/** Where a traveller stands on its procedure: what may begin, what is hurried, what a return supersedes. */
final class Course {

    private final Traveller traveller;
    private final Procedure procedure;

    Course(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
    }

    /**
     * The step that may begin now: the first unsigned one; or, where that one's hold has ended and a gap runs, the one
     * behind it, since hands in acid gauntlets rinse first and sign after.
     */
    Optional<Step> startable() {
        for (Step step : procedure.steps()) {
            Optional<StepRun> run = traveller.run(step.id());
            if (run.isEmpty()) {
                return Optional.of(step);
            }
            if (!run.get().isSigned() && !(step.gap().isPresent() && hasEnded(step, run.get()))) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** The gap that runs now, where one does. */
    Optional<GapClock> gap() {
        List<Step> steps = procedure.steps();
        for (int i = steps.size() - 2; i >= 0; i--) {
            Step from = steps.get(i);
            Step to = steps.get(i + 1);
            Optional<Moment> since = traveller.run(from.id()).flatMap(run -> endOf(from, run));
            if (from.gap().isPresent() && since.isPresent()) {
                return isMet(to, since.get()) ? Optional.empty() : Optional.of(clock(from, to, since.get()));
            }
            if (hasBegun(from)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /**
     * Whether beginning {@code step} makes the pieces safe, which quarantine must not delay: where a gap runs to it and
     * it takes something off them. Never into another bath, and never further along the route than dry.
     */
    boolean makesSafe(StepId step) {
        return gap().filter(gap -> gap.to().equals(step)).isPresent()
                && procedure.step(step).kind().makesSafe();
    }

    /** The steps from {@code step} on that have been begun. */
    List<StepId> begunFrom(StepId step) {
        return procedure.steps().subList(procedure.position(step), procedure.steps().size()).stream()
                .map(Step::id).filter(traveller.runs()::containsKey).toList();
    }

    static boolean readsBeforeHold(Step step) {
        return step.hold().isPresent() && step.readings().stream().anyMatch(spec -> spec.beforeHold());
    }

    static Moment earliestEnd(Hold hold, StepRun run) {
        return run.holdBegunAt().orElseThrow().plus(hold.minimum());
    }

    static Optional<Moment> latestEnd(Hold hold, StepRun run) {
        return hold.maximum().flatMap(longest -> run.holdBegunAt().map(begun -> begun.plus(longest)));
    }

    private static GapClock clock(Step from, Step to, Moment since) {
        Gap gap = from.gap().orElseThrow();
        return new GapClock(from.id(), to.id(), since, since.plus(gap.maximum()), gap.reason());
    }

    private boolean hasBegun(Step step) {
        return traveller.run(step.id()).flatMap(run -> beginOf(step, run)).isPresent();
    }

    /** Whether {@code to} has begun since then, in this passage or in one that a later return has superseded. */
    private boolean isMet(Step to, Moment since) {
        return hasBegun(to) || traveller.superseded().stream().filter(run -> run.step().equals(to.id()))
                .anyMatch(run -> beginOf(to, run).filter(begun -> !begun.isBefore(since)).isPresent());
    }

    private static Optional<Moment> beginOf(Step step, StepRun run) {
        return step.hold().isPresent() ? run.holdBegunAt() : Optional.of(run.startedAt());
    }

    private static boolean hasEnded(Step step, StepRun run) {
        return endOf(step, run).isPresent();
    }

    private static Optional<Moment> endOf(Step step, StepRun run) {
        return step.hold().isPresent() ? run.holdEndedAt() : run.signedAt();
    }
}
