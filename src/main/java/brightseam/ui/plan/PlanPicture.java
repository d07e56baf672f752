package brightseam.ui.plan;

import brightseam.kernel.BadgeId;
import brightseam.lineplan.PlanStanding;
import brightseam.planner.Action;
import brightseam.planner.LineProblem;
import brightseam.planner.Plan;
import brightseam.planner.PlannedStage;
import brightseam.planner.Stage;
import brightseam.ui.parts.Lanes;
import brightseam.words.Words;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Draws a plan: a lane for each load with its holds, a lane for each pair of hands. */
final class PlanPicture {

    private final PlanStanding standing;
    private final Plan plan;
    private final Function<BadgeId, String> names;
    private final ZoneId zone;

    /**
     * Of {@code standing}, which has a plan.
     *
     * @param names what people are called
     */
    PlanPicture(PlanStanding standing, Function<BadgeId, String> names, ZoneId zone) {
        this.standing = standing;
        this.plan = standing.plan().orElseThrow();
        this.names = names;
        this.zone = zone;
    }

    /** From {@code now} on for {@code span}; the whole plan where that ends earlier. */
    Lanes draw(Instant now, Duration span) {
        Instant end = now.plus(span);
        Instant last = wall(plan.actions().stream().mapToInt(Action::endSeconds).max().orElse(0)).plusSeconds(60);
        Instant until = last.isBefore(end) && last.isAfter(now.plusSeconds(600)) ? last : end;
        List<Lanes.Lane> lanes = new ArrayList<>();
        standing.situation().loads().stream().filter(load -> !plan.leftOut().contains(load.label()))
                .forEach(load -> lanes.add(new Lanes.Lane(load.label(), holds(load.label()))));
        standing.situation().problem().hands().forEach(hands ->
                lanes.add(new Lanes.Lane(cut(names.apply(hands.person())), work(hands.person()))));
        List<Lanes.Moment> moments = new ArrayList<>();
        standing.situation().problem().sessions().forEach(session -> moments.add(
                new Lanes.Moment(wall(session.dueSeconds()), session.kit() + " due")));
        return new Lanes("The plan from " + Words.clockTime(now, now, zone) + " to "
                + Words.clockTime(until, now, zone) + ": grey is a hold's minimum, white what it may last"
                + " longer by the plan, black is hands at work.", now.minusSeconds(60), until, zone, lanes, moments);
    }

    /** A hold's minimum in grey, what the plan adds in white. */
    private List<Lanes.Bar> holds(String load) {
        List<Lanes.Bar> bars = new ArrayList<>();
        plan.stages().stream().filter(stage -> stage.basket().equals(load)).forEach(stage -> {
            int least = Math.min(stage.endSeconds(), stage.startSeconds() + rule(stage).holdMinSeconds());
            bars.add(new Lanes.Bar(wall(stage.startSeconds()), wall(least), Lanes.Filling.GREY,
                    standing.step(stage).title()));
            if (least < stage.endSeconds()) {
                bars.add(new Lanes.Bar(wall(least), wall(stage.endSeconds()), Lanes.Filling.WHITE, ""));
            }
        });
        return bars;
    }

    private Stage rule(PlannedStage stage) {
        LineProblem problem = standing.situation().problem();
        return problem.baskets().stream().filter(basket -> basket.label().equals(stage.basket())).findFirst()
                .orElseThrow().stages().get(stage.number());
    }

    private List<Lanes.Bar> work(BadgeId person) {
        return plan.actions().stream().filter(action -> action.person().equals(person))
                .map(action -> new Lanes.Bar(wall(action.startSeconds()), wall(action.endSeconds()),
                        Lanes.Filling.BLACK, "")).toList();
    }

    private Instant wall(int seconds) {
        return standing.at(seconds).wall();
    }

    private static String cut(String name) {
        return name.length() <= 14 ? name : name.substring(0, 13) + "…";
    }
}
