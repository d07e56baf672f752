package brightseam.lineplan;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.planner.Basket;
import brightseam.planner.PartWindow;
import brightseam.planner.Progress;
import brightseam.planner.Stage;
import brightseam.procedure.BinClass;
import brightseam.procedure.Step;
import brightseam.procedure.WindowLimits;
import brightseam.traveller.Guide;
import brightseam.traveller.Handling;
import brightseam.traveller.StepRun;
import brightseam.traveller.Traveller;
import brightseam.traveller.Window;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Turns a load into the planner's basket: its stages with the tightest limits of all lots, and where it stands. */
final class LoadStages {

    private final Layout layout;
    private final List<LineStation> line;
    private final Moment now;

    LoadStages(Layout layout, List<LineStation> line, Moment now) {
        this.layout = layout;
        this.line = line;
        this.now = now;
    }

    Basket basket(LineLoad load, Map<KitId, Instant> due) {
        List<Stage> stages = new ArrayList<>();
        for (int i = 0; i < load.steps().size(); i++) {
            stages.add(stage(load, i));
        }
        Optional<KitId> kit = load.lots().stream().map(lot -> lot.traveller().kit()).distinct()
                .min(Comparator.comparing((KitId one) -> due.getOrDefault(one, Instant.MAX)).thenComparing(one -> one));
        Progress progress = progress(load);
        if (progress instanceof Progress.InStage begun) {
            stages.set(0, stillToKeep(stages.getFirst(), begun));
        }
        return new Basket(load.label(), kit, progress, 0, stages, window(load));
    }

    /** A maximum that is past cannot be kept any more and stands in no way; the pieces come out when they can. */
    private static Stage stillToKeep(Stage stage, Progress.InStage begun) {
        boolean past = stage.holdMaxSeconds().isPresent()
                && stage.holdMaxSeconds().getAsInt() <= -begun.sinceSeconds();
        return past ? stage.withHoldMax(OptionalInt.empty()) : stage;
    }

    private Stage stage(LineLoad load, int number) {
        Step step = load.steps().get(number);
        Place place = layout.place(step.station()).orElseThrow();
        List<Step> alike = alike(load, step);
        int hold = alike.stream().flatMap(one -> one.hold().stream())
                .mapToInt(one -> seconds(one.minimum())).max().orElse(0);
        int work = seconds(place.work().plus(place.workEach().multipliedBy(load.lots().size() - 1L)));
        OptionalInt longest = alike.stream().flatMap(one -> one.hold().flatMap(held -> held.maximum()).stream())
                .mapToInt(LoadStages::seconds).min();
        OptionalInt gap = alike.stream().flatMap(one -> one.gap().stream())
                .mapToInt(one -> seconds(one.maximum())).min();
        boolean sameStation = number > 0 && load.steps().get(number - 1).station().equals(step.station());
        int least = longest.isPresent() ? Math.min(Math.max(hold, work), longest.getAsInt()) : Math.max(hold, work);
        return new Stage(step.id(), stations(step), least, longest,
                number + 1 < load.steps().size() ? gap : OptionalInt.empty(),
                sameStation ? 0 : seconds(place.lower()), seconds(place.lift()), seconds(place.drip()),
                place.attended(), place.waits(), sameStation);
    }

    /** The step of this name in each lot's own procedure. */
    private static List<Step> alike(LineLoad load, Step step) {
        return load.lots().stream().flatMap(lot -> lot.procedure().find(step.id()).stream()).toList();
    }

    private List<StationId> stations(Step step) {
        return line.stream().filter(station -> station.stationClass().equals(step.station()))
                .map(LineStation::id).toList();
    }

    /** In its first stage where that has begun; else beside its last station, with the gap that can still be kept. */
    private Progress progress(LineLoad load) {
        Traveller traveller = load.first().traveller();
        Step first = load.steps().getFirst();
        Optional<StepRun> run = traveller.run(first.id());
        Optional<Moment> since = first.hold().isPresent() ? run.flatMap(StepRun::holdBegunAt)
                : run.map(StepRun::startedAt);
        if (since.isPresent()) {
            StationId at = run.flatMap(StepRun::station).filter(stations(first)::contains)
                    .orElse(stations(first).getFirst());
            return new Progress.InStage(at, Math.min(0, -seconds(now.since(since.get()))));
        }
        OptionalInt latest = load.lots().stream()
                .flatMap(lot -> Guide.gap(lot.traveller(), lot.procedure()).stream())
                .filter(gap -> gap.to().equals(first.id()))
                .mapToInt(gap -> seconds(gap.latest().since(now))).filter(left -> left > 0).min();
        return new Progress.Waiting(standsAt(traveller, first), latest);
    }

    private StationId standsAt(Traveller traveller, Step next) {
        Set<StationId> known = Set.copyOf(line.stream().map(LineStation::id).toList());
        return traveller.runs().values().stream().filter(run -> run.station().filter(known::contains).isPresent())
                .max(Comparator.comparing(StepRun::startedAt)).flatMap(StepRun::station)
                .orElseGet(() -> stations(next).getFirst());
    }

    /** The window of the lot that has least left; what opens and seals it lies on the line or has happened. */
    private Optional<PartWindow> window(LineLoad load) {
        WindowLimits limits = load.lots().stream().map(lot -> lot.procedure().window().limits())
                .min(Comparator.comparing(WindowLimits::open)).orElseThrow();
        int open = seconds(limits.open());
        int sealed = seconds(limits.sealedBag());
        OptionalInt sealing = number(load, step -> step.bins().equals(Set.of(BinClass.SEALED_BAG)));
        OptionalInt opening = number(load, step ->
                step.id().equals(load.first().procedure().window().openedBy()));
        if (opening.isPresent()) {
            return Optional.of(new PartWindow(opening, 0, open, sealing, sealed));
        }
        return load.lots().stream().flatMap(lot -> lot.traveller().window() instanceof Window.Open running
                        ? Optional.of(running.handled(Handling.OPEN, now)).stream() : Optional.<Window.Open>empty()
                        .stream())
                .map(running -> seconds(running.remaining(now))).min(Comparator.naturalOrder())
                .map(left -> new PartWindow(OptionalInt.empty(), left - open, open, sealing, sealed));
    }

    private static OptionalInt number(LineLoad load, java.util.function.Predicate<Step> which) {
        for (int i = 0; i < load.steps().size(); i++) {
            if (which.test(load.steps().get(i))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static int seconds(Duration duration) {
        return (int) Math.clamp(duration.toSeconds(), Integer.MIN_VALUE / 4, Integer.MAX_VALUE / 4);
    }
}
