package brightseam.lineplan;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.planner.Goal;
import brightseam.planner.Hands;
import brightseam.planner.LineProblem;
import brightseam.planner.Progress;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

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

    /**
     * Whether a plan that was made for {@code earlier} still answers this: the same loads at the same steps and places,
     * tanks, hands and sessions. Readings and signatures in between change nothing.
     */
    public boolean isAs(LineSituation earlier) {
        int later = (int) at.since(earlier.at).toSeconds();
        return aim == earlier.aim && travellers().equals(earlier.travellers())
                && problem.tanks().equals(earlier.problem.tanks())
                && hands().equals(earlier.hands()) && upstream.equals(earlier.upstream)
                && Arrays.equals(due(later), earlier.due(0)) && Arrays.equals(progress(later), earlier.progress(0));
    }

    private Map<String, List<TravellerId>> travellers() {
        return loads.stream().collect(Collectors.toMap(
                load -> load.label() + " " + load.steps().getFirst().id(), LineLoad::travellers));
    }

    private List<BadgeId> hands() {
        return problem.hands().stream().map(Hands::person).toList();
    }

    /** When sessions start, in seconds from {@code later} before; to five seconds, because seconds are rounded. */
    private long[] due(int later) {
        return problem.sessions().stream().mapToLong(session -> Math.round((session.startsSeconds() + later) / 5.0))
                .toArray();
    }

    /** When what is in a tank went in, and by when a running gap has to be met, by the same count. */
    private long[] progress(int later) {
        return problem.baskets().stream().mapToLong(basket -> switch (basket.progress()) {
            case Progress.InStage in -> Math.round((in.sinceSeconds() + later) / 5.0);
            case Progress.Waiting waiting -> waiting.latestStartSeconds().isPresent()
                    ? Math.round((waiting.latestStartSeconds().getAsInt() + later) / 5.0) : Long.MAX_VALUE;
        }).toArray();
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
