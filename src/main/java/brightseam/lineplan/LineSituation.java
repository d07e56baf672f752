package brightseam.lineplan;

import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.planner.Goal;
import brightseam.planner.LineProblem;
import java.util.List;
import java.util.Optional;

/**
 * How the line stood when a plan was asked for.
 *
 * @param at the moment that the problem's seconds count from
 * @param aim what the plan is for
 * @param problem the problem, one basket for each load, under its label
 * @param loads what is on the line
 * @param upstream travellers that have not come to the line yet and are not in the plan
 * @param withoutStation loads that are not in the plan because no station of a class that they need is on the line
 */
public record LineSituation(
        Moment at,
        Aim aim,
        LineProblem problem,
        List<LineLoad> loads,
        List<TravellerId> upstream,
        List<String> withoutStation) {

    /** Copies the lists. */
    public LineSituation {
        loads = List.copyOf(loads);
        upstream = List.copyOf(upstream);
        withoutStation = List.copyOf(withoutStation);
    }

    /** The same line with the sessions left aside, to be ready as soon as it can be. */
    public LineProblem withoutSessions() {
        return problem.withSessions(List.of()).withGoal(new Goal.Soonest());
    }

    /** The load under {@code label}. */
    public Optional<LineLoad> load(String label) {
        return loads.stream().filter(load -> load.label().equals(label)).findFirst();
    }
}
