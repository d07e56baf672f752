package brightseam.ui.bench;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.Decision;
import brightseam.kernel.HeatId;
import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.procedure.Procedure;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.ProcedureLoader;
import brightseam.procedure.shell.SharedTables;
import brightseam.traveller.ArcFact;
import brightseam.traveller.Contact;
import brightseam.traveller.Guide;
import brightseam.traveller.Joined;
import brightseam.traveller.JointFact;
import brightseam.traveller.NextAction;
import brightseam.traveller.PartIdentity;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerCommand;
import brightseam.traveller.TravellerDecider;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.Uses;
import brightseam.traveller.shell.Card;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** A lot on a shipped procedure, led along it by the guide; everything is in order on the way. */
public final class LedLot {

    static final Vocabulary VOCABULARY = SharedTables.read();
    private static final Signer ADA =
            new Signer(new BadgeId("P-0101"), "Ada Quill", List.of(Role.FABRICATOR), Optional.empty(), "badge+pin");
    private static final Signer INSPECTOR =
            new Signer(new BadgeId("P-0301"), "Ben Fell", List.of(Role.INSPECTOR), Optional.of("BS-01"), "badge+pin");

    private final List<TravellerEvent> record = new ArrayList<>();
    private final TravellerId id;
    private final Procedure procedure;
    private Moment now = new Moment(Instant.parse("2031-03-04T08:00:00Z"), 1_000_000);

    private static Procedure shipped(String file) {
        try {
            return ((ProcedureLoader.Loaded) new ProcedureLoader(VOCABULARY).load(
                    file, Files.readAllBytes(Path.of("procedures", file)))).procedure();
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    /** A lot of tubes that is to be released under {@code label}. */
    public LedLot(String label) {
        this(label, "tube.yaml");
    }

    /** A lot that is to be released under {@code label}, on the shipped procedure of {@code file}. */
    public LedLot(String label, String file) {
        id = new TravellerId(label);
        procedure = shipped(file);
    }

    /** What its clock has come to. */
    public Moment now() {
        return now;
    }

    /** Its fabricator, now. */
    public Origin origin() {
        return new Origin(now, ADA.badge(), "TAB-TEST", true);
    }

    /** Carries {@code command} out; it has to be accepted. */
    public void does(TravellerCommand command) {
        Decision<TravellerEvent> decision = TravellerDecider.decide(Traveller.fold(record), procedure, command);
        record.addAll(assertInstanceOf(Decision.Accepted.class, decision, () -> command + " " + decision).events()
                .stream().map(TravellerEvent.class::cast).toList());
    }

    /** How it stands. */
    public Card card() {
        return new Card(Traveller.fold(record).orElseThrow(), procedure, record.size());
    }

    private Card released() {
        does(new TravellerCommand.Release(origin(), id, new KitId("K-1"),
                new PartIdentity("HDF-1", "Leg tube", "A"), 4, new TravellerCommand.HeatFact(
                        new HeatId("H-1"), "9", false)));
        return card();
    }

    /** Follows the guide until {@code goal} is its answer. */
    public NextAction until(Predicate<NextAction> goal) {
        released();
        for (int i = 0; i < 200; i++) {
            NextAction next = Guide.next(card().traveller(), procedure);
            if (goal.test(next)) {
                return next;
            }
            follow(next);
        }
        throw new AssertionError("the guide never said that");
    }

    /** Does {@code next}; it has to be accepted. */
    public void follow(NextAction next) {
        switch (next) {
            case NextAction.PutInto put -> does(new TravellerCommand.PutInBin(origin(), new TravellerCommand.BinFact(
                    new BinId("B-" + record.size()), put.classes().getLast(), false)));
            case NextAction.CloseBin close -> does(new TravellerCommand.CloseBin(origin()));
            case NextAction.Begin begin -> does(new TravellerCommand.StartStep(origin(), begin.step().id(),
                    Optional.of(new TravellerCommand.StationFact(new StationId("S-1"), begin.step().station(), false)),
                    true, true, List.of(), scanned(begin.step()), List.of()));
            case NextAction.Read read -> does(new TravellerCommand.TakeReading(
                    origin(), read.step().id(), read.reading().id(), good(read.reading())));
            case NextAction.BeginHold begin -> does(new TravellerCommand.BeginHold(origin(), begin.step().id()));
            case NextAction.Holding holding -> {
                now = holding.earliest();
                does(new TravellerCommand.EndHold(origin(), holding.step().id()));
            }
            case NextAction.Sign sign -> does(new TravellerCommand.SignStep(
                    origin(), sign.step().id(), ADA, List.of(), List.of()));
            case NextAction.AwaitStamp stamp -> does(new TravellerCommand.StampStep(
                    origin(), stamp.step().id(), INSPECTOR, "", List.of()));
            case NextAction.AwaitDisposition stopped -> throw new AssertionError(stopped);
            case NextAction.AwaitSession inside -> inSession(inside.step());
            case NextAction.Ended ended -> throw new AssertionError(ended);
        }
    }

    /** One joint of the whole lot, in order. */
    private void inSession(Step step) {
        SessionId session = new SessionId("CS-0001");
        StationId chamber = new StationId("S-CHAMBER-1");
        JointId joint = JointId.parse("K-1.J01");
        if (step.kind() == StepKind.PASS_IN) {
            does(new TravellerCommand.EnterChamber(origin(), session, chamber, "open chamber", scanned(step), ADA,
                    List.of(), List.of()));
            return;
        }
        does(new TravellerCommand.BeginArc(origin(), new ArcFact(joint, session, chamber, 1,
                List.of(Joined.lot(id)), "ERTi-9", ADA.badge(), "purged", List.of(), false)));
        Moment began = now;
        now = now.plus(Duration.ofSeconds(30));
        does(new TravellerCommand.NoteJoint(origin(), new JointFact(joint, session, chamber, 1, began, now, now,
                List.of(Joined.lot(id)), "ERTi-9", ADA.badge(), "purged", new SupplyId("G-0701"),
                new BigDecimal("30.0"), new BigDecimal("12.0"), new BigDecimal("9.0"), new BigDecimal("0.0"),
                List.of(), List.of(), true, "ab".repeat(32), List.of(), false)));
        does(new TravellerCommand.SignWelding(origin(), ADA, List.of(), List.of()));
    }

    /** Everything that {@code step} asks for by scan. */
    private List<Contact> scanned(Step step) {
        return Uses.asked(card().traveller(), procedure, step).stream()
                .map(use -> new Contact(use.kind(), use.type(), "G-1", "LOT-1")).toList();
    }

    private static BigDecimal good(ReadingSpec spec) {
        return spec.limits().maximum().orElse(BigDecimal.ONE);
    }
}
