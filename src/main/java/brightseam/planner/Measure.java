package brightseam.planner;

import brightseam.kernel.KitId;
import java.util.HashMap;
import java.util.Map;

/** What a plan is measured by; less is better. */
public final class Measure {

    private Measure() {}

    /** The goal's own measure: see {@link Goal}. */
    public static long first(LineProblem problem, Plan plan) {
        return switch (problem.goal()) {
            case Goal.ForSessions ignored -> leads(problem, plan) + lastEndWithoutSession(problem, plan);
            case Goal.Soonest ignored -> lastEnd(problem, plan);
            case Goal.ReadyBy ignored -> plan.leftOut().size();
        };
    }

    /** Seconds from each kit's first start to its due time, added up. */
    public static long leads(LineProblem problem, Plan plan) {
        Map<KitId, Long> leads = new HashMap<>();
        for (Basket basket : problem.baskets()) {
            problem.sessionOf(basket).filter(session -> basket.mayStay()).ifPresent(session ->
                    plan.stage(basket.label(), 0).ifPresent(stage -> leads.merge(session.kit(),
                            (long) session.dueSeconds() - stage.startSeconds(), Math::max)));
        }
        return leads.values().stream().mapToLong(Long::longValue).sum();
    }

    /** What the plan is measured by next, where {@link #first} is the same: ends, spread or the last end. */
    public static long second(LineProblem problem, Plan plan) {
        return switch (problem.goal()) {
            case Goal.ForSessions ignored -> spread(problem, plan);
            case Goal.Soonest ignored -> ends(problem, plan);
            case Goal.ReadyBy ignored -> lastEnd(problem, plan);
        };
    }

    private static long lastEndWithoutSession(LineProblem problem, Plan plan) {
        return problem.baskets().stream().filter(basket -> problem.sessionOf(basket).isEmpty())
                .mapToLong(basket -> ready(basket, plan)).max().orElse(0);
    }

    /** When the last basket is ready, in seconds. */
    public static long lastEnd(LineProblem problem, Plan plan) {
        long last = 0;
        for (Basket basket : problem.baskets()) {
            last = Math.max(last, ready(basket, plan));
        }
        return last;
    }

    /** Seconds that baskets are under way, from the first start to ready, added up: how far a kit is spread. */
    public static long spread(LineProblem problem, Plan plan) {
        long sum = 0;
        for (Basket basket : problem.baskets()) {
            sum += plan.stage(basket.label(), 0)
                    .map(stage -> ready(basket, plan) - stage.startSeconds()).orElse(0L);
        }
        return sum;
    }

    /** When each basket is ready, added up. */
    public static long ends(LineProblem problem, Plan plan) {
        return problem.baskets().stream().mapToLong(basket -> ready(basket, plan)).sum();
    }

    private static long ready(Basket basket, Plan plan) {
        return plan.stage(basket.label(), basket.last())
                .map(stage -> (long) stage.endSeconds() + basket.stages().getLast().clearSeconds()).orElse(0L);
    }
}
