package brightseam.traveller;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.StepId;
import brightseam.people.Signer;
import brightseam.procedure.Procedure;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** One traveller with its clock: given what happened, when somebody asks for something, then events or refusals. */
final class Shop {

    final Procedure procedure;
    final Commands ask;
    private final List<TravellerEvent> record = new ArrayList<>();
    private Moment now = new Moment(Instant.parse("2031-03-04T08:00:00Z"), 1_000_000);
    private TravellerCommand asked;
    private Decision<TravellerEvent> last;

    Shop(Procedure procedure) {
        this.procedure = procedure;
        this.ask = new Commands(procedure, this::now);
    }

    /** A lot of four, just released. */
    static Shop withLot() {
        return withLot(TestProcedures.tube());
    }

    static Shop withLot(Procedure procedure) {
        Shop shop = new Shop(procedure);
        return shop.does(ask -> ask.release("T-1042", 4, "9", false));
    }

    /** A lot of four that has gone the good way until {@code step} is the one to begin. */
    static Shop withLotAt(String step) {
        return withLot().goesOnTo(step);
    }

    Moment now() {
        return now;
    }

    List<TravellerEvent> record() {
        return List.copyOf(record);
    }

    Traveller traveller() {
        return Traveller.fold(record).orElseThrow();
    }

    Shop given(List<? extends TravellerEvent> events) {
        record.addAll(events);
        return this;
    }

    Shop passes(Duration time) {
        now = now.plus(time);
        return this;
    }

    /** The clock on the wall is set; nothing has passed. */
    Shop wallClockIsSet(Duration by) {
        now = new Moment(now.wall().plus(by), now.elapsedMillis());
        return this;
    }

    Shop when(Function<Commands, TravellerCommand> command) {
        asked = command.apply(ask);
        last = TravellerDecider.decide(Traveller.fold(record), procedure, asked);
        if (last instanceof Decision.Accepted<TravellerEvent> accepted) {
            record.addAll(accepted.events());
        }
        return this;
    }

    /** Asks for something that has to be accepted. */
    Shop does(Function<Commands, TravellerCommand> command) {
        when(command);
        if (last instanceof Decision.Refused<TravellerEvent> refused) {
            fail("refused: " + refused.refusals());
        }
        return this;
    }

    Shop thenEvents(Class<?>... events) {
        if (!(last instanceof Decision.Accepted<TravellerEvent> accepted)) {
            return fail("refused: " + last);
        }
        assertEquals(List.of(events), accepted.events().stream().map(Object::getClass).toList());
        return this;
    }

    Shop thenRefused(String... codes) {
        assertEquals(List.of(codes), refusals().stream().map(Refusal::code).toList());
        return this;
    }

    List<Refusal> refusals() {
        return last instanceof Decision.Refused<TravellerEvent> refused ? refused.refusals()
                : fail("accepted: " + last);
    }

    <E extends TravellerEvent> E lastOf(Class<E> type) {
        return record.stream().filter(type::isInstance).map(type::cast).reduce((earlier, later) -> later).orElseThrow();
    }

    long count(Class<? extends TravellerEvent> type) {
        return record.stream().filter(type::isInstance).count();
    }

    /** The traveller that the last decision set apart, with its own record and the same clock. */
    Shop child() {
        if (!(last instanceof Decision.Accepted<TravellerEvent> accepted)) {
            return fail("refused: " + last);
        }
        List<TravellerEvent> stored = record.subList(0, record.size() - accepted.events().size());
        Shop child = new Shop(procedure);
        child.now = now;
        TravellerEvent.SetApart first = Parting.child(stored, accepted.events()).orElseThrow();
        child.given(List.of(first));
        return asked instanceof TravellerCommand.TakeOut takeOut
                ? child.given(Parting.leaving(first, procedure, takeOut)) : child;
    }

    /** Follows the guide until {@code step} is the one to begin; everything is in order on the way. */
    Shop goesOnTo(String step) {
        StepId goal = new StepId(step);
        for (int i = 0; i < 200; i++) {
            if (isToBegin(goal)) {
                return signsWhatWentBefore(goal);
            }
            follows();
        }
        return fail("never came to " + step + ": " + Guide.next(traveller(), procedure));
    }

    private boolean isToBegin(StepId goal) {
        Traveller traveller = traveller();
        NextAction next = Guide.next(traveller, procedure);
        boolean begins = next instanceof NextAction.Begin begin && begin.step().id().equals(goal)
                || next instanceof NextAction.AwaitStamp stamp && stamp.step().id().equals(goal)
                || next instanceof NextAction.AwaitSession inside && inside.step().id().equals(goal);
        return begins && traveller.run(goal).isEmpty();
    }

    /** Where a gap hurries, the step before it has ended but is not signed yet. */
    private Shop signsWhatWentBefore(StepId goal) {
        Step before = procedure.step(traveller().currentStep().orElseThrow());
        return before.id().equals(goal) ? this : does(ask -> ask.sign(before.id().value(), signerOf(before)));
    }

    Shop goesOnToTheEnd() {
        for (int i = 0; i < 200 && !traveller().hasEnded(); i++) {
            follows();
        }
        assertEquals(Phase.CLOSED, traveller().phase());
        return this;
    }

    /** Does the one thing that the guide names; it has to be accepted. */
    Shop follows() {
        return switch (Guide.next(traveller(), procedure)) {
            case NextAction.PutInto next -> does(ask -> ask.put(freshBin(), next.classes().getLast()));
            case NextAction.CloseBin next -> does(Commands::close);
            case NextAction.Begin next -> does(ask -> ask.start(next.step().id().value()));
            case NextAction.Read next -> does(ask -> good(next.step(), next.reading()));
            case NextAction.BeginHold next -> does(ask -> ask.beginHold(next.step().id().value()));
            case NextAction.Holding next -> {
                if (now.isBefore(next.earliest())) {
                    now = now.plus(next.earliest().since(now));
                }
                yield does(ask -> ask.endHold(next.step().id().value()));
            }
            case NextAction.Sign next -> does(ask -> ask.sign(next.step().id().value(), signerOf(next.step())));
            case NextAction.AwaitStamp next -> inspects(next.step());
            case NextAction.AwaitDisposition next -> does(ask -> ask.decide(
                    next.open().getFirst().number(), Disposition.USE_AS_IS, Commands.INSPECTOR));
            case NextAction.AwaitSession next -> inSession(next.step());
            case NextAction.Ended next -> fail("ended: " + next.phase());
        };
    }

    /** One joint for the whole lot, welded in order. */
    private Shop inSession(Step step) {
        if (step.kind() == StepKind.PASS_IN) {
            return does(Inside::enter);
        }
        return traveller().run(step.id()).isPresent() ? does(ask -> Inside.sign(ask, signerOf(step)))
                : does(ask -> Inside.arc(ask, "J03", 1)).passes(Duration.ofSeconds(20))
                        .does(ask -> Inside.good(ask, "J03", 1));
    }

    private Shop inspects(Step step) {
        String id = step.id().value();
        Optional<StepRun> run = traveller().run(step.id());
        if (run.isEmpty() && !step.readings().isEmpty()) {
            return does(ask -> ask.start(id));
        }
        for (ReadingSpec spec : step.readings()) {
            if (new ReadingRules(traveller(), procedure).isDue(run.orElseThrow(), spec)) {
                return does(ask -> good(step, spec));
            }
        }
        return does(ask -> ask.stamp(id, Commands.INSPECTOR));
    }

    private TravellerCommand good(Step step, ReadingSpec spec) {
        return ask.read(step.id().value(), spec.id(), spec.limits().maximum().orElseThrow().toPlainString());
    }

    private String freshBin() {
        return "B-" + (1000 + record.size());
    }

    private static Signer signerOf(Step step) {
        return step.signedBy() == SignedBy.LEAD ? Commands.LEAD : Commands.FABRICATOR;
    }
}
