package brightseam.traveller;

import brightseam.kernel.StepId;
import brightseam.procedure.BinClass;
import brightseam.procedure.Procedure;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * Finds the one thing to do now. It only points; whether it may be done is decided by {@link TravellerDecider}. Pieces
 * in a bath come first, then a running gap, then quarantine, then the step at hand. Where the gap is long enough to
 * read and sign first, the step that has ended is finished first, so that readings are taken while they still hold.
 */
public final class Guide {

    /** A gap up to this long leaves hands no time for anything but the next step. Common practice, from memory. */
    static final Duration HURRY_MAX = Duration.ofMinutes(2);

    private final Traveller traveller;
    private final Procedure procedure;
    private final Course course;

    private Guide(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
        this.course = new Course(traveller, procedure);
    }

    /** The one thing to do now with {@code traveller}. */
    public static NextAction next(Traveller traveller, Procedure procedure) {
        return new Guide(traveller, procedure).next();
    }

    /** The gap that runs now, where one does. */
    public static Optional<GapClock> gap(Traveller traveller, Procedure procedure) {
        return new Course(traveller, procedure).gap();
    }

    /** Classes of bin that the pieces may lie in now. */
    public static List<BinClass> bins(Traveller traveller, Procedure procedure) {
        return new BinRules(traveller, procedure).allowed();
    }

    /** Whether {@code step} is one that may be entered after it was done, where it begins next. */
    public static boolean mayBeLate(Procedure procedure, Step step) {
        return LateRules.mayBeLate(procedure, step);
    }

    /** Steps that a rework of {@code nc} may return to now. */
    public static List<StepId> returns(
            Traveller traveller, Procedure procedure, Nonconformance nc) {
        return new QuarantineRules(traveller, procedure).returns(nc);
    }

    /**
     * What an inspector does now at the inspection point at hand: begin it, hold, read, or stamp. Bins are not asked.
     *
     * @throws java.util.NoSuchElementException where nothing is left to sign
     */
    public static NextAction inspect(Traveller traveller, Procedure procedure) {
        return new Guide(traveller, procedure).inspect(procedure.step(traveller.currentStep().orElseThrow()));
    }

    private NextAction next() {
        if (traveller.hasEnded() || traveller.currentStep().isEmpty()) {
            return traveller.isInQuarantine() ? new NextAction.AwaitDisposition(traveller.openNonconformances())
                    : new NextAction.Ended(traveller.phase());
        }
        Optional<NextAction> holding = traveller.runs().values().stream().filter(StepRun::isHolding)
                .findFirst().map(this::holding);
        if (holding.isPresent()) {
            return holding.get();
        }
        Optional<GapClock> gap = course.gap();
        boolean waits = traveller.isInQuarantine() && gap.filter(to -> !course.makesSafe(to.to())).isPresent();
        if (gap.isPresent() && !waits && !finishesFirst(gap.get())) {
            return toBegin(procedure.step(gap.get().to()), gap);
        }
        if (traveller.isInQuarantine()) {
            return new NextAction.AwaitDisposition(traveller.openNonconformances());
        }
        Step step = procedure.step(traveller.currentStep().orElseThrow());
        if (step.inSession()) {
            return toTheSession(step);
        }
        return step.isInspectionPoint() ? toInspect(step) : toFinish(step, gap);
    }

    /** At the bench pieces are made ready for the lock, and that is all. */
    private NextAction toTheSession(Step step) {
        boolean before = step.kind() == StepKind.PASS_IN && traveller.run(step.id()).isEmpty();
        if (before && unfit(step)) {
            return putInto(step, Optional.empty());
        }
        return mustCloseBefore(step).filter(close -> before)
                .orElseGet(() -> new NextAction.AwaitSession(step));
    }

    /**
     * Whether the step that has ended is finished before the next one begins: where the gap is long enough for it, or
     * where the next one needs another bin and the signature is given in this one. In quarantine pieces are made safe.
     */
    private boolean finishesFirst(GapClock gap) {
        Step to = procedure.step(gap.to());
        Step current = procedure.step(traveller.currentStep().orElseThrow());
        boolean leavesTime = gap.latest().since(gap.since()).compareTo(HURRY_MAX) > 0;
        return !traveller.isInQuarantine() && !current.equals(to)
                && (leavesTime || unfit(to) && !unfit(current));
    }

    private NextAction toInspect(Step step) {
        return unfit(step) ? putInto(step, Optional.empty()) : mustClose(step).orElse(new NextAction.AwaitStamp(step));
    }

    private NextAction inspect(Step step) {
        Optional<StepRun> run = traveller.run(step.id());
        boolean implied = step.readings().isEmpty() && step.hold().isEmpty();
        if (run.isEmpty() && !implied) {
            return new NextAction.Begin(step, Optional.empty());
        }
        if (step.hold().isPresent() && run.get().holdEndedAt().isEmpty()) {
            return run.get().isHolding() ? holding(run.get()) : toBegin(step, Optional.empty());
        }
        return step.readings().stream()
                .filter(spec -> new ReadingRules(traveller, procedure).isDue(run.orElseThrow(), spec))
                .findFirst().<NextAction>map(spec -> read(step, run.orElseThrow(), spec, Optional.empty()))
                .orElseGet(() -> new NextAction.AwaitStamp(step));
    }

    private NextAction holding(StepRun run) {
        Step step = procedure.step(run.step());
        return new NextAction.Holding(step, run.holdBegunAt().orElseThrow(),
                Course.earliestEnd(step.hold().orElseThrow(), run), Course.latestEnd(step.hold().orElseThrow(), run));
    }

    private NextAction toBegin(Step step, Optional<GapClock> gap) {
        if (unfit(step)) {
            return putInto(step, gap);
        }
        Optional<StepRun> run = traveller.run(step.id());
        if (run.isEmpty()) {
            return mustCloseBefore(step)
                    .orElseGet(() -> new NextAction.Begin(step, gap));
        }
        return step.readings().stream().filter(ReadingSpec::beforeHold)
                .filter(spec -> run.get().reading(spec.id()).filter(Reading::currentInLimits).isEmpty())
                .findFirst().<NextAction>map(spec -> read(step, run.get(), spec, gap))
                .orElseGet(() -> new NextAction.BeginHold(step, gap));
    }

    private NextAction toFinish(Step step, Optional<GapClock> gap) {
        Optional<StepRun> run = traveller.run(step.id());
        if (run.isEmpty() || step.hold().isPresent() && run.get().holdBegunAt().isEmpty()) {
            return toBegin(step, gap);
        }
        return step.readings().stream()
                .filter(spec -> new ReadingRules(traveller, procedure).isDue(run.get(), spec))
                .findFirst().<NextAction>map(spec -> read(step, run.get(), spec, gap))
                .orElseGet(() -> toSign(step));
    }

    private NextAction toSign(Step step) {
        BinRules bins = new BinRules(traveller, procedure);
        if (unfit(step) || bins.uncleanAfter(step).isPresent()) {
            return putInto(step, Optional.empty());
        }
        return mustClose(step).orElseGet(() -> new NextAction.Sign(step));
    }

    private boolean unfit(Step step) {
        BinRules bins = new BinRules(traveller, procedure);
        boolean intoTheLock = step.kind() == StepKind.PASS_IN
                && traveller.placement().filter(where -> where.binClass().isClean()).isEmpty();
        return bins.unfitFor(step).isPresent() || intoTheLock;
    }

    private NextAction putInto(Step step, Optional<GapClock> gap) {
        boolean clean = step.kind() == StepKind.PASS_IN || traveller.window() instanceof Window.Open
                || procedure.window().openedBy().equals(step.id());
        return new NextAction.PutInto(step,
                clean ? BinRules.cleanOf(step) : step.bins().stream().sorted().toList(), gap);
    }

    private Optional<NextAction> mustClose(Step step) {
        return traveller.placement()
                .filter(where -> step.kind() == StepKind.PASS_IN || where.binClass() == BinClass.SEALED_BAG)
                .filter(where -> !where.closed())
                .map(where -> new NextAction.CloseBin(step, where.bin(), where.binClass()));
    }

    private Optional<NextAction> mustCloseBefore(Step step) {
        return traveller.placement()
                .filter(where -> step.kind() == StepKind.PASS_IN && !where.closed())
                .map(where -> new NextAction.CloseBin(step, where.bin(), where.binClass()));
    }

    private static NextAction read(Step step, StepRun run, ReadingSpec spec, Optional<GapClock> gap) {
        return new NextAction.Read(step, spec, run.reading(spec.id()).isPresent(), gap);
    }
}
