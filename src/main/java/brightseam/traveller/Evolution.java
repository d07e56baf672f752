package brightseam.traveller;

import brightseam.kernel.ContactKind;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.ProcedureRef;
import brightseam.traveller.TravellerEvent.*;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Folds one event into a traveller. Never refuses: what is in the ledger has happened. */
final class Evolution {

    private final TravellerId id;
    private Optional<TravellerId> parent = Optional.empty();
    private final KitId kit;
    private final PartIdentity part;
    private List<Integer> pieces;
    private final HeatId heat;
    private final ProcedureRef procedure;
    private final List<StepId> route;
    private final Moment releasedAt;
    private final Map<StepId, StepRun> runs;
    private final List<StepRun> superseded;
    private Optional<Placement> placement;
    private Window window;
    private List<Nonconformance> nonconformances;
    private Phase phase;
    private Optional<StepId> passedInBy;
    private Optional<SessionId> session;
    private List<ArcRun> arcs;
    private boolean glovesSpent;

    private Evolution(Traveller from, TravellerId id) {
        this.id = id;
        this.parent = from.parent();
        this.kit = from.kit();
        this.part = from.part();
        this.pieces = from.pieces();
        this.heat = from.heat();
        this.procedure = from.procedure();
        this.route = from.route();
        this.releasedAt = from.releasedAt();
        this.runs = new LinkedHashMap<>(from.runs());
        this.superseded = new ArrayList<>(from.superseded());
        this.placement = from.placement();
        this.window = from.window();
        this.nonconformances = new ArrayList<>(from.nonconformances());
        this.phase = from.phase();
        this.passedInBy = from.passedInBy();
        this.session = from.session();
        this.arcs = from.arcs();
        this.glovesSpent = from.glovesSpent();
    }

    static Traveller evolve(Optional<Traveller> state, TravellerEvent event) {
        if (event instanceof Released first) {
            return released(first);
        }
        if (event instanceof SetApart first) {
            return setApart(first);
        }
        Traveller from = state.orElseThrow(() -> new IllegalStateException("a record begins with its release"));
        Evolution next = new Evolution(from, from.id());
        next.apply(event);
        return next.done();
    }

    private static Traveller released(Released e) {
        return new Traveller(e.traveller(), Optional.empty(), e.kit(), e.part(), List.copyOf(e.pieces()), e.heat(),
                e.procedure(), List.copyOf(e.route()), e.at(), Map.of(), List.of(), Optional.empty(),
                new Window.NotOpen(), List.of(), Phase.ACTIVE, Optional.empty(), Optional.empty(),
                List.of(), false);
    }

    private static Traveller setApart(SetApart e) {
        Traveller before = Traveller.fold(e.history()).orElseThrow();
        Evolution child = new Evolution(before, e.traveller());
        child.parent = Optional.of(e.parent());
        child.pieces = List.copyOf(e.pieces());
        child.nonconformances = before.nonconformances().stream()
                .map(nc -> nc.withPieces(nc.pieces().stream().filter(e.pieces()::contains).toList()))
                .toList();
        child.keepArcs();
        return child.done();
    }

    private void apply(TravellerEvent event) {
        switch (event) {
            case Released e -> throw new IllegalStateException("released twice: " + id);
            case SetApart e -> throw new IllegalStateException("set apart twice: " + id);
            case PiecesSetApart e -> partWith(e);
            case PutInBin e -> place(new Placement(e.bin(), e.binClass(), e.closed()), e.at());
            case BinClosed e -> placement.ifPresent(where -> place(where.withClosed(true), e.at()));
            case BinOpened e -> placement.ifPresent(where -> place(where.withClosed(false), e.at()));
            case StepStarted e -> runs.put(e.step(), StepRun.started(e.step(), passOf(e.step()), e));
            case StepEnteredLate e -> run(e.step(), run -> run.enteredLate(StepRun.Late.of(e)));
            case ContactMade e -> glovesSpent &= e.contacts().stream()
                    .noneMatch(contact -> contact.kind() == ContactKind.GLOVES);
            case HoldBegun e -> run(e.step(), run -> run.holdBegun(e.at()));
            case HoldEnded e -> run(e.step(), run -> run.holdEnded(e.at()));
            case ReadingTaken e -> run(e.step(), run -> run.reading(new Reading(e.reading(), e.value(), e.inLimits(),
                    e.at(), e.by(), Optional.empty())));
            case ReadingCorrected e -> run(e.step(), run -> corrected(run, e));
            case StepSigned e -> run(e.step(), run -> run.signed(e.at(), e.signature()));
            case StepStamped e -> run(e.step(), run -> run.signed(e.at(), e.signature()));
            case WindowOpened e -> window = Window.Open.at(e.at(), e.limits(), handling());
            case WindowEnded e -> window = new Window.Ended(e.at(), e.why());
            case TouchReported e -> glovesSpent = true;
            case GlovesSpent e -> glovesSpent = true;
            case NonconformanceOpened e -> nonconformances.add(new Nonconformance(e.number(), e.cause(), e.step(),
                    e.pass(), List.copyOf(e.pieces()), e.text(), e.at(), Optional.empty()));
            case Dispositioned e -> nonconformances.replaceAll(nc -> nc.number() == e.number()
                    ? nc.decided(new Nonconformance.Decided(e.disposition(), e.reason(), e.at(), e.signature()))
                    : nc);
            case ReturnedToStep e -> returned(e);
            case PiecesScrapped e -> scrap(e.pieces());
            case PassedIn e -> passIn();
            case EnteredChamber e -> enter(e);
            case LockPassed e -> pass(e);
            case ArcBegun e -> begin(e);
            case JointWelded e -> end(e);
            case JointJudged e -> { }
            case Closed e -> phase = Phase.CLOSED;
            case AttemptRefused e -> { }
        }
    }

    private void run(StepId step, UnaryOperator<StepRun> change) {
        runs.computeIfPresent(step, (key, run) -> change.apply(run));
    }

    private int passOf(StepId step) {
        return 1 + (int) superseded.stream().filter(run -> run.step().equals(step)).count();
    }

    private Handling handling() {
        return placement.map(Placement::handling).orElse(Handling.OPEN);
    }

    private void place(Placement where, Moment at) {
        placement = Optional.of(where);
        window = phase == Phase.PASSED_IN ? window : keptIn(where.handling(), at);
    }

    private Window keptIn(Handling handling, Moment at) {
        return window instanceof Window.Open open ? open.handled(handling, at) : window;
    }

    /** Out of their bin; the window runs on as it did in there. */
    private void enter(EnteredChamber e) {
        placement = Optional.empty();
        session = Optional.of(e.session());
    }

    /** Out of the chamber again they are in the open, whatever comes. */
    private void pass(LockPassed e) {
        boolean out = !e.lock().inward() && phase == Phase.PASSED_IN;
        window = out ? keptIn(Handling.OPEN, e.at()) : window;
    }

    private void begin(ArcBegun e) {
        ArcFact arc = e.arc();
        lit(new ArcRun(arc.joint(), arc.session(), arc.run(), e.pass(), named(arc.parts()), arc.welder(), e.at(),
                Optional.empty(), Optional.empty()));
    }

    /** A run whose beginning was never written down counts all the same. */
    private void end(JointWelded e) {
        JointFact joint = e.joint();
        if (arcs.stream().noneMatch(arc -> arc.is(joint.joint(), joint.run()))) {
            lit(new ArcRun(joint.joint(), joint.session(), joint.run(), e.pass(), named(joint.parts()),
                    joint.welder(), joint.startedAt(), Optional.empty(), Optional.empty()));
        }
        arcs = arcs.stream().map(arc -> arc.is(joint.joint(), joint.run())
                ? arc.ended(joint.stoppedAt(), joint.hotUntil()) : arc).toList();
    }

    private void lit(ArcRun arc) {
        List<ArcRun> more = new ArrayList<>(arcs);
        more.add(arc);
        arcs = List.copyOf(more);
    }

    private List<Integer> named(List<Joined> parts) {
        List<Integer> named = parts.stream().filter(part -> part.traveller().equals(id))
                .flatMap(part -> part.pieces().stream()).toList();
        return named.isEmpty() ? pieces : named;
    }

    /** The step just signed is the one that passed the pieces in. */
    private void passIn() {
        phase = Phase.PASSED_IN;
        passedInBy = route.stream().filter(step -> runs.containsKey(step) && runs.get(step).isSigned())
                .reduce((earlier, later) -> later);
    }

    /** What was closed was taken out of its bin then. */
    private void returned(ReturnedToStep e) {
        placement = phase == Phase.CLOSED ? Optional.empty() : placement;
        e.superseded().forEach(step -> superseded.add(runs.remove(step)));
        if (passedInBy.filter(e.superseded()::contains).isPresent()) {
            phase = Phase.ACTIVE;
            passedInBy = Optional.empty();
            session = Optional.empty();
            window = keptIn(handling(), e.at());
        } else if (phase == Phase.CLOSED) {
            phase = Phase.PASSED_IN;
        }
    }

    private void partWith(PiecesSetApart e) {
        pieces = pieces.stream().filter(piece -> !e.pieces().contains(piece)).toList();
        nonconformances.replaceAll(nc -> nc.isOpen()
                ? nc.withPieces(nc.pieces().stream().filter(pieces::contains).toList()) : nc);
        keepArcs();
    }

    /** A joint goes with its pieces. */
    private void keepArcs() {
        arcs = arcs.stream().filter(arc -> arc.pieces().stream().anyMatch(pieces::contains)).toList();
    }

    private void scrap(List<Integer> gone) {
        pieces = pieces.stream().filter(piece -> !gone.contains(piece)).toList();
        if (pieces.isEmpty()) {
            phase = Phase.SCRAPPED;
        }
    }

    private static StepRun corrected(StepRun run, ReadingCorrected e) {
        List<Reading> readings = new ArrayList<>(run.readings());
        for (int i = readings.size() - 1; i >= 0; i--) {
            Reading was = readings.get(i);
            if (was.id().equals(e.reading())) {
                readings.set(i, new Reading(was.id(), was.value(), was.inLimits(), was.at(), was.by(), Optional.of(
                        new Reading.Correction(e.to(), e.inLimits(), e.reason(), e.at(), e.by()))));
                break;
            }
        }
        return run.withReadings(readings);
    }

    private Traveller done() {
        return new Traveller(id, parent, kit, part, pieces, heat, procedure, route, releasedAt,
                Collections.unmodifiableMap(runs), Collections.unmodifiableList(superseded), placement, window,
                List.copyOf(nonconformances), phase, passedInBy, session, arcs, glovesSpent);
    }
}
