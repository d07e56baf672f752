package brightseam.traveller;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.people.Signer;
import brightseam.procedure.BinClass;
import brightseam.procedure.Procedure;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.traveller.TravellerCommand.StationFact;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/**
 * A shift of people who mostly do what the guide says and sometimes anything at all, on one lot and the lots set apart
 * from it. The same seed gives the same shift.
 */
final class RandomShift {

    private static final Contact GLOVES = new Contact(ContactKind.GLOVES, "white-cotton", "G-1", "77");
    private static final int QUANTITY = 5;
    private static final List<Signer> PEOPLE = List.of(Commands.FABRICATOR, Commands.SECOND, Commands.LEAD,
            Commands.INSPECTOR, Commands.UNSTAMPED, Commands.ALL_ROUND);

    final TreeMap<String, List<TravellerEvent>> records = new TreeMap<>();
    final TreeMap<String, Traveller> states = new TreeMap<>();
    final Set<Class<?>> events = new HashSet<>();
    final Set<Class<?>> refusals = new HashSet<>();
    final Set<Phase> phases = new HashSet<>();
    final List<String> guideRefused = new ArrayList<>();

    final Procedure procedure;
    private final Random random;
    private final Commands ask;
    private Moment now = new Moment(Instant.parse("2031-03-04T08:00:00Z"), 1_000_000);
    private String at = "T-1042";
    int takenOut;

    RandomShift(long seed) {
        this.random = new Random(seed);
        this.procedure = seed % 2 == 0 ? TestProcedures.tube() : TestProcedures.welded();
        this.ask = new Commands(procedure, () -> now);
    }

    int quantity() {
        return QUANTITY;
    }

    RandomShift run(int steps) {
        tryOut(ask.release(at, 1000 * random.nextInt(2), "5", random.nextBoolean()));
        tryOut(ask.release(at, QUANTITY, "9", false));
        for (int i = 0; i < steps; i++) {
            List<String> running = states.values().stream().filter(state -> !state.hasEnded())
                    .map(state -> state.id().value()).toList();
            if (running.isEmpty()) {
                break;
            }
            at = random.nextInt(50) == 0 ? one(List.copyOf(records.keySet())) : one(running);
            timePasses();
            boolean asTold = random.nextInt(100) < 72;
            if (asTold) {
                tryOut(ask.watch());
            }
            TravellerCommand command = asTold ? told() : anything();
            boolean accepted = tryOut(command);
            if (asTold && !accepted && pointedBySureGuide()) {
                guideRefused.add(Guide.next(states.get(at), procedure) + " -> " + command);
            }
        }
        return this;
    }

    /**
     * The guide names no person and does not judge whether enough of the window is left for the lock; people give it up
     * to date states, so what time alone has brought about is noted before it is asked.
     */
    private boolean pointedBySureGuide() {
        NextAction next = Guide.next(states.get(at), procedure);
        boolean lock = states.get(at).currentStep().filter(new StepId("pass-in")::equals).isPresent();
        boolean somebodyElse = next instanceof NextAction.AwaitStamp || next instanceof NextAction.AwaitSession
                || next instanceof NextAction.AwaitDisposition;
        return !somebodyElse && !(next instanceof NextAction.Ended) && !(next instanceof NextAction.Holding) && !lock;
    }

    private void timePasses() {
        int dice = random.nextInt(1000);
        Duration step = dice < 700 ? Duration.ofSeconds(random.nextInt(20))
                : dice < 985 ? Duration.ofSeconds(random.nextInt(150))
                : dice < 995 ? Duration.ofMinutes(random.nextInt(90))
                : Duration.ofHours(random.nextInt(100));
        if (random.nextInt(40) == 0 && states.get(at).window() instanceof Window.Open open) {
            step = open.remaining(now).minusSeconds(random.nextInt(1800)).abs();
        }
        Duration wall = dice % 50 == 0 ? Duration.ofHours(random.nextInt(200) - 100) : step;
        now = new Moment(now.wall().plus(wall), now.elapsedMillis() + step.toMillis());
    }

    private boolean tryOut(TravellerCommand command) {
        Optional<Traveller> before = Optional.ofNullable(states.get(at));
        return switch (TravellerDecider.decide(before, procedure, command)) {
            case Decision.Accepted<TravellerEvent> accepted -> {
                List<TravellerEvent> record = records.computeIfAbsent(at, key -> new ArrayList<>());
                Parting.child(record, accepted.events()).ifPresent(first -> begin(first, command));
                accepted.events().forEach(event -> happenTo(at, record, event));
                yield true;
            }
            case Decision.Refused<TravellerEvent> refused -> {
                refused.refusals().forEach(refusal -> refusals.add(refusal.getClass()));
                if (before.isPresent() && random.nextInt(20) == 0) {
                    tryOut(new TravellerCommand.NoteRefusal(ask.by(Commands.LEAD), "attempt", refused.refusals()));
                }
                yield false;
            }
        };
    }

    private void begin(TravellerEvent.SetApart first, TravellerCommand command) {
        String child = first.traveller().value();
        List<TravellerEvent> record = records.computeIfAbsent(child, k -> new ArrayList<>());
        happenTo(child, record, first);
        if (command instanceof TravellerCommand.TakeOut takeOut) {
            Parting.leaving(first, procedure, takeOut).forEach(event -> happenTo(child, record, event));
            takenOut++;
        }
    }

    private void happenTo(String label, List<TravellerEvent> record, TravellerEvent event) {
        record.add(event);
        events.add(event.getClass());
        states.put(label, Evolution.evolve(Optional.ofNullable(states.get(label)), event));
        phases.add(states.get(label).phase());
    }

    private TravellerCommand told() {
        Traveller traveller = states.get(at);
        return switch (Guide.next(traveller, procedure)) {
            case NextAction.PutInto next -> ask.put("B-" + random.nextInt(100_000), one(next.classes()));
            case NextAction.CloseBin next -> ask.close();
            case NextAction.Begin next -> random.nextBoolean() ? ask.start(next.step().id().value())
                    : ask.startTouchedBy(GLOVES, next.step().id().value());
            case NextAction.Read next ->
                    ask.read(next.step().id().value(), next.reading().id(), value(next.reading(), 6));
            case NextAction.BeginHold next -> ask.beginHold(next.step().id().value());
            case NextAction.Holding next -> switch (random.nextInt(25)) {
                case 0 -> ask.cutHoldShort(next.step().id().value());
                case 1 -> takeOut(traveller);
                default -> ask.endHold(next.step().id().value());
            };
            case NextAction.Sign next -> Uses.gloves(procedure, next.step()).filter(worn -> traveller.glovesSpent())
                    .<TravellerCommand>map(worn -> ask.changeGloves(worn.type()))
                    .orElseGet(() -> ask.sign(next.step().id().value(), Commands.LEAD));
            case NextAction.AwaitStamp next -> inspect(traveller, next.step());
            case NextAction.AwaitDisposition next -> decide(one(next.open()),
                    random.nextInt(3) == 0 ? one(PEOPLE) : Commands.INSPECTOR);
            case NextAction.AwaitSession next -> new RandomSession(ask, random, at).told(traveller, next.step());
            case NextAction.Ended next -> ask.watch();
        };
    }

    /** One piece, or the whole lot, into a bin of the step's class or of any. */
    private TravellerCommand takeOut(Traveller traveller) {
        List<Integer> pieces = random.nextInt(4) == 0 ? traveller.pieces()
                : List.of(traveller.pieces().isEmpty() ? 1 : one(traveller.pieces()));
        BinClass into = random.nextInt(4) == 0 ? anyClass() : BinClass.PROCESS_BASKET;
        return ask.takeOut("T-" + (3000 + records.size()), into, one(PEOPLE), pieces.toArray(Integer[]::new));
    }

    private TravellerCommand inspect(Traveller traveller, Step step) {
        String id = step.id().value();
        if (random.nextInt(8) == 0) {
            return ask.reject(id, Commands.INSPECTOR, one(traveller.pieces()));
        }
        if (traveller.run(step.id()).isEmpty() && !step.readings().isEmpty()) {
            return ask.start(id);
        }
        return step.readings().stream().filter(spec -> new ReadingRules(traveller, procedure).isDue(
                        traveller.run(step.id()).orElseThrow(), spec)).findFirst()
                .<TravellerCommand>map(spec -> ask.read(id, spec.id(), value(spec, 6)))
                .orElseGet(() -> ask.stamp(id, Commands.INSPECTOR));
    }

    private TravellerCommand decide(Nonconformance nc, Signer who) {
        List<StepId> returns = Guide.returns(states.get(at), procedure, nc);
        int dice = random.nextInt(10);
        if (random.nextInt(20) == 0) {
            return ask.rework(nc.number(), one(procedure.route()).value(), who);
        }
        if (dice < 4 && !returns.isEmpty()) {
            return ask.rework(nc.number(), one(returns).value(), who);
        }
        Disposition kept = dice < 7 ? Disposition.REPAIR : Disposition.USE_AS_IS;
        boolean lost = dice < 5 && random.nextInt(3) == 0;
        return ask.decide(nc.number(), lost ? Disposition.SCRAP : kept, who);
    }

    private TravellerCommand anything() {
        if (random.nextInt(4) == 0) {
            Optional<TravellerCommand> careless = careless(Guide.next(states.get(at), procedure));
            if (careless.isPresent()) {
                return careless.get();
            }
        }
        String known = random.nextBoolean() ? current() : one(procedure.route()).value();
        String step = random.nextInt(30) == 0 ? "etch" : known;
        Signer who = one(PEOPLE);
        Integer piece = 1 + random.nextInt(QUANTITY + 1);
        return switch (random.nextInt(23)) {
            case 21, 22 -> new RandomSession(ask, random, at).anything(states.get(at), who);
            case 20 -> takeOut(states.get(at));
            case 0 -> ask.put("B-" + random.nextInt(3), one(List.of(BinClass.values())));
            case 1 -> ask.put("B-7", anyClass(), random.nextBoolean(), who);
            case 2 -> ask.close();
            case 3 -> ask.open();
            case 4 -> random.nextBoolean() ? ask.startTouchedBy(GLOVES, step) : ask.startTouching(List.of(), step);
            case 5 -> random.nextInt(3) == 0 ? ask.enterLate(step, random, who)
                    : ask.start(step, station(step), random.nextBoolean(), random.nextBoolean());
            case 6 -> ask.beginHold(random.nextInt(4) == 0 ? step : current());
            case 7 -> ask.endHold(step);
            case 8 -> read(step);
            case 9 -> correct(step, who);
            case 10, 11 -> ask.sign(step, who);
            case 12 -> ask.stamp(step, who);
            case 13 -> ask.reject(step, who, piece);
            case 14 -> handled();
            case 15 -> random.nextInt(3) > 0 ? ask.report(piece) : ask.suspect(step, who);
            case 16 -> random.nextBoolean() ? ask.rework(1 + random.nextInt(4), step, who)
                    : ask.decide(1 + random.nextInt(4), one(List.of(Disposition.values())), who);
            case 17 -> random.nextBoolean() ? ask.setApart(at, piece)
                    : ask.setApart("T-1", states.get(at).pieces().toArray(Integer[]::new));
            case 18 -> random.nextInt(3) > 0 ? ask.watch()
                    : ask.setApart("T-" + (2000 + records.size()), piece, 1 + random.nextInt(QUANTITY));
            default -> ask.release(at, QUANTITY, "9", false);
        };
    }

    private TravellerCommand handled() {
        return switch (random.nextInt(4)) {
            case 0 -> ask.touch(random.nextInt(4) == 0 ? "" : "sleeve");
            case 1 -> ask.glovesSpent(random.nextInt(4) == 0 ? "" : "a tool");
            default -> ask.changeGloves(random.nextInt(4) == 0 ? "acid gauntlets" : "clean-room");
        };
    }

    /** What people in a hurry do instead of what the guide says. */
    private Optional<TravellerCommand> careless(NextAction next) {
        if (next instanceof NextAction.Begin(Step step, var gap)) {
            String id = step.id().value();
            return Optional.of(random.nextBoolean() ? ask.enterLate(id, random, Commands.LEAD)
                    : ask.start(id, station(id), random.nextBoolean(), random.nextBoolean()));
        }
        return next instanceof NextAction.Read r ? Optional.of(ask.beginHold(r.step().id().value())) : Optional.empty();
    }

    private BinClass anyClass() {
        return one(List.of(BinClass.values()));
    }

    private String current() {
        return states.get(at).currentStep().map(StepId::value).orElse("cut");
    }

    private Optional<StationFact> station(String step) {
        return random.nextInt(3) == 0 ? Optional.empty() : Optional.of(new StationFact(new StationId("S-1"),
                random.nextBoolean() ? "saw" : "pickle-tank", random.nextInt(5) == 0));
    }

    private TravellerCommand read(String step) {
        return procedure.find(new StepId(step)).flatMap(found -> found.readings().stream().findAny())
                .map(spec -> ask.read(step, spec.id(), random.nextInt(9) == 0 ? "7.00001" : value(spec, 2)))
                .orElseGet(() -> ask.read(step, "colour", "1"));
    }

    private TravellerCommand correct(String step, Signer who) {
        return procedure.find(new StepId(step)).flatMap(found -> found.readings().stream().findAny())
                .map(spec -> ask.correct(step, spec.id(), value(spec, 3), who))
                .orElseGet(() -> ask.correct(step, "colour", "1", who));
    }

    private String value(ReadingSpec spec, int goodIn) {
        return switch (random.nextInt(goodIn + 1)) {
            case 0 -> spec.limits().minimum().orElseThrow().subtract(java.math.BigDecimal.ONE).toPlainString();
            case 1 -> spec.limits().minimum().orElseThrow().toPlainString();
            default -> spec.limits().maximum().orElseThrow().toPlainString();
        };
    }

    private <T> T one(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
