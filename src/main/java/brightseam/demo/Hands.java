package brightseam.demo;

import brightseam.kernel.BinId;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.line.Station;
import brightseam.line.shell.Stations;
import brightseam.procedure.BinClass;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.traveller.GapClock;
import brightseam.traveller.NextAction;
import brightseam.traveller.Placement;
import brightseam.traveller.StepRun;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.InspectorActions;
import brightseam.traveller.shell.TravellerActions;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** Does single actions of a {@link Story} through the shop's services, each after the time that a person needs. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class Hands {

    private static final Duration HURRY = Duration.ofSeconds(5);
    private static final Duration KEYING = Duration.ofSeconds(15);
    private static final Duration CARRYING = Duration.ofMinutes(2);
    private static final Duration WORKING = Duration.ofMinutes(8);
    private static final Duration CHECKING = Duration.ofMinutes(2);
    private static final Duration INSPECTING = Duration.ofMinutes(4);
    private static final DemoPerson FABRICATOR = DemoPerson.ILKA_FERROW;
    private static final DemoPerson INSPECTOR = DemoPerson.SANNA_VEIT;

    private final TravellerActions actions;
    private final InspectorActions inspections;
    private final Stations stations;
    private final Shelf shelf;
    private final Cupboard cupboard;
    private final Crew crew;
    private final RandomGenerator chance = RandomGeneratorFactory.of("L64X128MixRandom").create(4471);

    Hands(TravellerActions actions, InspectorActions inspections, Stations stations, Shelf shelf,
            Cupboard cupboard, Crew crew) {
        this.actions = actions;
        this.inspections = inspections;
        this.stations = stations;
        this.shelf = shelf;
        this.cupboard = cupboard;
        this.crew = crew;
    }

    /** The step that {@code action} belongs to. */
    static Optional<Step> step(NextAction action) {
        return switch (action) {
            case NextAction.PutInto put -> Optional.of(put.step());
            case NextAction.CloseBin close -> Optional.of(close.step());
            case NextAction.Begin begin -> Optional.of(begin.step());
            case NextAction.Read read -> Optional.of(read.step());
            case NextAction.BeginHold begin -> Optional.of(begin.step());
            case NextAction.Holding holding -> Optional.of(holding.step());
            case NextAction.Sign sign -> Optional.of(sign.step());
            case NextAction.AwaitStamp await -> Optional.of(await.step());
            case NextAction.AwaitSession await -> Optional.of(await.step());
            case NextAction.AwaitDisposition await -> Optional.empty();
            case NextAction.Ended ended -> Optional.empty();
        };
    }

    /** Does {@code next}, which is due on all of {@code load}; a hold is not ended. */
    void act(NextAction next, List<Card> load, Consumer<Duration> pass) {
        switch (next) {
            case NextAction.PutInto put -> {
                pass.accept(pace(put.gap(), KEYING));
                putInto(put, load);
            }
            case NextAction.CloseBin close -> {
                pass.accept(KEYING);
                Crew.done(actions.closeBin(me(), close.bin()));
            }
            case NextAction.Begin begin -> {
                pass.accept(pace(begin.gap(), CARRYING));
                begin(begin.step(), load);
                pass.accept(working(begin.step()));
            }
            case NextAction.Read read -> {
                pass.accept(pace(read.gap(), KEYING));
                read(read.step(), read.reading(), load);
            }
            case NextAction.BeginHold begin -> {
                pass.accept(HURRY);
                Crew.done(actions.beginHold(me(), ids(load), begin.step().id()));
            }
            case NextAction.Holding holding -> { }
            case NextAction.Sign sign -> {
                pass.accept(KEYING);
                sign(sign.step(), load);
            }
            case NextAction.AwaitStamp await -> {
                pass.accept(INSPECTING);
                load.forEach(card -> Crew.done(inspections.stamp(crew.actor(INSPECTOR), card.id(),
                        await.step().id(), crew.signer(INSPECTOR), "")));
            }
            case NextAction.AwaitSession await ->
                throw new IllegalStateException(ids(load) + " go on in a chamber session: " + await.step().id());
            case NextAction.AwaitDisposition await ->
                throw new IllegalStateException(ids(load) + " in quarantine: " + await.open());
            case NextAction.Ended ended -> throw new IllegalStateException(ids(load) + " ended: " + ended.phase());
        }
    }

    /** Ends the hold of {@code step}. */
    void endHold(Step step, List<Card> load) {
        Crew.done(actions.endHold(me(), ids(load), step.id()));
    }

    /** Reads and signs one step before {@code next} whose hold has ended; answers whether there was one. */
    boolean sign(List<Card> load, NextAction next, Consumer<Duration> pass) {
        Step current = load.getFirst().currentStep().orElseThrow();
        boolean alike = load.stream().allMatch(card -> card.currentStep().filter(current::equals).isPresent()
                && !card.traveller().isInQuarantine());
        Optional<StepRun> run = load.getFirst().traveller().run(current.id());
        if (!alike || step(next).filter(current::equals).isPresent() || run.isEmpty()) {
            return false;
        }
        for (ReadingSpec spec : current.readings()) {
            if (run.get().reading(spec.id()).isEmpty()) {
                pass.accept(KEYING);
                read(current, spec, load);
            }
        }
        pass.accept(KEYING);
        sign(current, load);
        return true;
    }

    private void putInto(NextAction.PutInto put, List<Card> load) {
        load.stream().flatMap(card -> card.traveller().placement().stream())
                .filter(Placement::closed).map(Placement::bin).distinct()
                .forEach(bin -> Crew.done(actions.openBin(me(), bin)));
        if (put.classes().equals(List.of(BinClass.SEALED_BAG))) {
            load.forEach(card -> Crew.done(actions.putInBin(me(), List.of(card.id()), shelf.free(put.classes(), 1))));
        } else {
            Crew.done(actions.putInBin(me(), ids(load), shelf.free(put.classes(), load.size())));
        }
    }

    private void begin(Step step, List<Card> load) {
        Optional<StationId> station = stations.all().stream()
                .filter(found -> found.stationClass().equals(step.station()) && !found.isOutOfUse())
                .map(Station::id).findFirst();
        Crew.done(actions.startStep(me(), ids(load), step.id(), station, true, true, cupboard.take(step, load)));
    }

    private void read(Step step, ReadingSpec spec, List<Card> load) {
        Crew.done(actions.takeReading(me(), ids(load), step.id(), spec.id(), Typical.value(spec, chance)));
    }

    private void sign(Step step, List<Card> load) {
        DemoPerson signer = step.signedBy() == SignedBy.LEAD ? DemoPerson.BRAM_ODUYA : FABRICATOR;
        Crew.done(actions.signStep(crew.actor(signer), ids(load), step.id(), crew.signer(signer)));
    }

    private Actor me() {
        return crew.actor(FABRICATOR);
    }

    private static List<TravellerId> ids(List<Card> load) {
        return load.stream().map(Card::id).toList();
    }

    private static Duration pace(Optional<GapClock> gap, Duration unhurried) {
        return gap.isPresent() ? HURRY : unhurried;
    }

    private static Duration working(Step step) {
        if (step.hold().isPresent()) {
            return Duration.ZERO;
        }
        return step.kind() == StepKind.WORK ? WORKING : CHECKING;
    }
}
