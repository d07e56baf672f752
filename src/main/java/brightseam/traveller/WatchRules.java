package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StepId;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.TravellerEvent.NonconformanceOpened;
import brightseam.traveller.TravellerEvent.WindowEnded;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What time alone brings about, each once. */
final class WatchRules {

    private final Traveller traveller;
    private final Procedure procedure;
    private final Origin origin;

    WatchRules(Traveller traveller, Procedure procedure, Origin origin) {
        this.traveller = traveller;
        this.procedure = procedure;
        this.origin = origin;
    }

    List<TravellerEvent> due() {
        List<TravellerEvent> events = new ArrayList<>();
        if (!traveller.hasEnded()) {
            events.addAll(overruns());
            missedGap(traveller.nextNonconformance() + events.size()).ifPresent(events::add);
            events.addAll(windowRunOut());
        }
        return events;
    }

    private List<TravellerEvent> overruns() {
        List<TravellerEvent> events = new ArrayList<>();
        for (StepRun run : traveller.runs().values()) {
            Step step = procedure.step(run.step());
            Optional<Moment> latest = step.hold().filter(hold -> run.isHolding())
                    .flatMap(hold -> Course.latestEnd(hold, run));
            if (latest.filter(origin.at()::isAfter).isPresent() && !isKnown(Cause.HOLD_OVERRUN, run)) {
                events.add(opened(traveller.nextNonconformance() + events.size(), Cause.HOLD_OVERRUN, run,
                        "longest hold " + step.hold().orElseThrow().maximum().orElseThrow()));
            }
        }
        return events;
    }

    /** A gap that quarantine itself holds up is noted once it is decided, when somebody could have gone on. */
    private Optional<TravellerEvent> missedGap(int number) {
        Course course = new Course(traveller, procedure);
        return course.gap()
                .filter(gap -> !traveller.isInQuarantine() || course.makesSafe(gap.to()))
                .filter(gap -> origin.at().isAfter(gap.latest()))
                .map(gap -> traveller.run(gap.from()).orElseThrow())
                .filter(run -> !isKnown(Cause.GAP_EXCEEDED, run))
                .map(run -> opened(number, Cause.GAP_EXCEEDED, run,
                        "longest gap " + procedure.step(run.step()).gap().orElseThrow().maximum()));
    }

    /** In the chamber nothing is returned by itself: what is welded is welded, and a new joint is refused. */
    private List<TravellerEvent> windowRunOut() {
        if (!(traveller.window() instanceof Window.Open open) || !open.hasRunOut(origin.at())) {
            return List.of();
        }
        List<TravellerEvent> events = new ArrayList<>();
        events.add(new WindowEnded(origin, WindowEnd.RUN_OUT));
        if (traveller.phase() == Phase.PASSED_IN) {
            return events;
        }
        StepId back = procedure.window().renewReturnsTo();
        events.add(new TravellerEvent.ReturnedToStep(origin, back, "clean window ran out",
                new Course(traveller, procedure).begunFrom(back)));
        return events;
    }

    private boolean isKnown(Cause cause, StepRun run) {
        return traveller.nonconformances().stream().anyMatch(nc ->
                nc.cause() == cause && nc.step().equals(run.step()) && nc.pass() == run.pass());
    }

    private NonconformanceOpened opened(int number, Cause cause, StepRun run, String text) {
        return new NonconformanceOpened(origin, number, cause, run.step(), run.pass(), traveller.pieces(), text,
                Optional.empty());
    }
}
