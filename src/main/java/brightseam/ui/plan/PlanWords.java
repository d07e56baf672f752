package brightseam.ui.plan;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StepId;
import brightseam.lineplan.Aim;
import brightseam.lineplan.LineLoad;
import brightseam.lineplan.Move;
import brightseam.lineplan.PlanStanding;
import brightseam.planner.Answer;
import brightseam.planner.Conflict;
import brightseam.planner.Demand;
import brightseam.planner.Plan;
import brightseam.planner.PlannedStage;
import brightseam.planner.Quality;
import brightseam.procedure.Step;
import brightseam.words.Words;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Says what a plan is, in the shop's words. */
public final class PlanWords {

    private final PlanStanding standing;
    private final Function<BadgeId, String> names;
    private final ZoneId zone;
    private final Instant now;

    /**
     * About {@code standing}.
     *
     * @param names what people are called
     */
    public PlanWords(PlanStanding standing, Function<BadgeId, String> names, ZoneId zone, Instant now) {
        this.standing = standing;
        this.names = names;
        this.zone = zone;
        this.now = now;
    }

    /** How good it is and when it was made. */
    String standing() {
        String made = "Made at " + clock(standing.situation().at().wall()) + ". ";
        return made + switch (standing.answer()) {
            case Answer.Planned planned -> quality(planned.quality());
            case Answer.Impossible impossible -> "There is no plan as things stand.";
            case Answer.Undecided undecided -> "None was found in the time given, and it is not proven that none is.";
        };
    }

    private static String quality(Quality quality) {
        if (quality.isProven()) {
            return "No plan is better for what it is made for.";
        }
        double percent = quality.gap() * 100;
        return percent > 50 ? "A plan that keeps every limit; how good it is, is not known yet."
                : "At most " + Math.max(1, Math.round(percent)) + " % from the best that there can be.";
    }

    /** A move, such as "B-0203 into Acid pickle at S-PICKLE-1". */
    public static String move(Move move) {
        return move.step().map(step -> move.load() + " into " + step.title() + " at " + move.to())
                .orElseGet(() -> move.load() + " off the line at " + move.from());
    }

    /** Who takes it up and when, and when the hold begins. */
    String times(Move move) {
        return names.apply(move.person()) + " takes it at " + clock(move.takenAt().wall())
                + move.step().filter(step -> step.hold().isPresent())
                        .map(step -> ", the hold begins at " + clock(move.beginsAt().wall())).orElse("");
    }

    /** When every load is ready, soonest first; then what is left out. */
    List<String> ready() {
        Plan plan = standing.plan().orElseThrow();
        List<String> lines = new java.util.ArrayList<>(standing.situation().loads().stream()
                .filter(load -> !plan.leftOut().contains(load.label()))
                .sorted(Comparator.comparing(this::readyAt))
                .map(load -> name(load) + " is ready at " + clock(readyAt(load))).toList());
        plan.leftOut().stream().sorted().forEach(label -> lines.add(
                standing.situation().load(label).map(PlanWords::name).orElse(label) + " cannot be ready in time"));
        return lines;
    }

    /** When the last stage of {@code load} ends. */
    Instant readyAt(LineLoad load) {
        return standing.plan().orElseThrow().stages().stream()
                .filter(stage -> stage.basket().equals(load.label()))
                .mapToInt(PlannedStage::endSeconds).max().stream().mapToObj(standing::at)
                .findFirst().orElseThrow().wall();
    }

    private static String name(LineLoad load) {
        return load.label() + " (" + String.join(", ", load.travellers().stream().map(Object::toString).toList())
                + ")";
    }

    /** Everything that stands against one another, a sentence each. */
    List<String> conflict(Conflict conflict) {
        return conflict.demands().stream().map(this::demand).toList();
    }

    /** What the list of {@link #conflict} is. */
    static String about(Conflict conflict) {
        if (conflict.demands().isEmpty()) {
            return "The shortest times alone leave no room: a gap that runs cannot be met any more.";
        }
        return conflict.isSmallest() ? "These cannot all be kept. If any one of them gives way, there is a plan:"
                : "These cannot all be kept (there may be a shorter list):";
    }

    private String demand(Demand demand) {
        return switch (demand) {
            case Demand.SessionDue due -> "Kit " + due.kit() + " is to be ready at " + at(due.dueSeconds()) + ".";
            case Demand.ShiftEnds ends -> names.apply(ends.person()) + " works until " + at(ends.endSeconds()) + ".";
            case Demand.TankLocked locked -> locked.station() + " is locked or out of use.";
            case Demand.TankRoom room -> room.station() + " takes "
                    + Words.count(room.capacityBaskets(), "basket", "baskets") + " at once.";
            case Demand.HoldMaximum hold -> hold.basket() + ": " + title(hold.basket(), hold.step()) + " lasts at most "
                    + duration(hold.maxSeconds()) + ".";
            case Demand.GapMaximum gap -> gap.basket() + ": the step after " + title(gap.basket(), gap.step())
                    + " begins within " + duration(gap.maxSeconds()) + ".";
            case Demand.GapRunning gap -> gap.basket() + ": " + title(gap.basket(), gap.step()) + " has to begin by "
                    + at(gap.latestSeconds()) + ".";
            case Demand.WindowOpen window -> window.basket() + " is still clean when the session of " + window.kit()
                    + " begins.";
            case Demand.PairsOfHands hands -> hands.count() == 0 ? "Nobody is at the line."
                    : Words.count(hands.count(), "pair of hands does", "pairs of hands do") + " one thing at a time.";
        };
    }

    private String title(String load, StepId step) {
        Optional<Step> found = standing.situation().load(load).stream().flatMap(one -> one.steps().stream())
                .filter(one -> one.id().equals(step)).findFirst();
        return found.map(Step::title).orElse(step.value().replace('-', ' ')).toLowerCase(Locale.ROOT);
    }

    /** An aim as people say it. */
    static String aim(Aim aim) {
        return switch (aim) {
            case FOR_SESSIONS -> "Kits ready together, just in time for their sessions";
            case SOONEST -> "Everything as soon as it can be";
            case STILL_TODAY -> "As much as can still be ready today";
        };
    }

    private String at(int seconds) {
        return clock(standing.at(seconds).wall());
    }

    private String clock(Instant moment) {
        return Words.clockTime(moment, now, zone);
    }

    private static String duration(int seconds) {
        return Words.duration(Duration.ofSeconds(seconds));
    }
}
