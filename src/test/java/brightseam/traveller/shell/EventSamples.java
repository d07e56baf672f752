package brightseam.traveller.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.ContactKind;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.procedure.BinClass;
import brightseam.procedure.ProcedureRef;
import brightseam.procedure.WindowLimits;
import brightseam.traveller.Contact;
import brightseam.traveller.Disposition;
import brightseam.traveller.Meaning;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.PartIdentity;
import brightseam.traveller.Signature;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.TravellerEvent.*;
import brightseam.traveller.WindowEnd;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** One event of every type with every field filled, and the odd forms: absent fields, decimals, nested histories. */
final class EventSamples {

    private static final Origin BENCH = new Origin(
            new Moment(Instant.parse("2031-03-04T09:15:30.250Z"), 86_400_250), new BadgeId("P-0007"), "bench-2", true);
    private static final Origin SERVER = new Origin(
            new Moment(Instant.parse("2031-03-04T09:16:00Z"), 86_430_000), Origin.SHOP, "server", false);
    private static final StepId PICKLE = new StepId("pickle");
    private static final BinId BIN = new BinId("B-0142");
    private static final TravellerId PARENT = new TravellerId("T-1042");
    private static final TravellerId CHILD = new TravellerId("T-1042.1");

    private final Optional<String> content;

    private EventSamples(Optional<String> content) {
        this.content = content;
    }

    /** As they are written today: marks are bound to what was signed. */
    static List<TravellerEvent> all() {
        return new EventSamples(Optional.of("c0".repeat(32))).list();
    }

    /** Those that carry a mark, as they were when marks were bound to nothing; late entries came after that. */
    static List<TravellerEvent> firstForms() {
        List<TravellerEvent> bound = all();
        List<TravellerEvent> unbound = new EventSamples(Optional.empty()).list();
        Set<Class<?>> marked = bound.stream().filter(event -> event.mark().isPresent()).map(Object::getClass)
                .collect(Collectors.toSet());
        return unbound.stream().filter(event -> marked.contains(event.getClass()))
                .filter(event -> !(event instanceof StepEnteredLate)).toList();
    }

    private List<TravellerEvent> list() {
        List<TravellerEvent> all = new ArrayList<>(lot());
        all.addAll(steps());
        all.addAll(trouble());
        all.addAll(ChamberSamples.all(BENCH, mark(Meaning.REJECTED)));
        return all;
    }

    /** Set apart from a traveller that had been set apart itself. */
    static SetApart grandchild() {
        return new EventSamples(Optional.of("c0".repeat(32))).child();
    }

    private SetApart child() {
        SetApart child = new SetApart(BENCH, CHILD, PARENT, 1, List.of(3, 4), "one dent", mark(Meaning.SEPARATED),
                List.of(released()));
        return new SetApart(SERVER, new TravellerId("T-1042.1.1"), CHILD, 2, List.of(4), "one scratch",
                mark(Meaning.SEPARATED), List.of(child, new BinClosed(BENCH, BIN)));
    }

    private List<TravellerEvent> lot() {
        return List.of(
                released(),
                child(),
                new PiecesSetApart(BENCH, CHILD, List.of(3, 4), "one dent", mark(Meaning.SEPARATED)),
                new PutInBin(BENCH, BIN, BinClass.CLEAN_BIN, false),
                new BinClosed(BENCH, BIN),
                new BinOpened(BENCH, BIN),
                new PiecesScrapped(BENCH, List.of(2)));
    }

    private List<TravellerEvent> steps() {
        return List.of(
                new StepStarted(BENCH, PICKLE, Optional.of(new StationId("S-ACID-1")), true,
                        Optional.of("acid gauntlets"), List.of(new TravellerId("T-1043"))),
                new StepStarted(BENCH, new StepId("final-review"), Optional.empty(), true, Optional.empty(), List.of()),
                new StepEnteredLate(BENCH, PICKLE, Instant.parse("2031-03-04T07:40:00Z"), "no network",
                        mark(Meaning.STATED_LATE)),
                new ContactMade(BENCH, PICKLE, List.of(
                        new Contact(ContactKind.BATH, "pickling-acid", "S-ACID-1", "fill 12"),
                        new Contact(ContactKind.GLOVES, "white-cotton", "G-0031", "LOT 77/A"))),
                new HoldBegun(BENCH, PICKLE),
                new HoldEnded(BENCH, PICKLE),
                new ReadingTaken(BENCH, PICKLE, "bath-temperature", new BigDecimal("21.50"), true),
                new ReadingCorrected(BENCH, PICKLE, "bath-temperature", new BigDecimal("21.50"),
                        new BigDecimal("0.00001"), false, "mistyped \u00e9 \u2103", mark(Meaning.CORRECTED)),
                new StepSigned(BENCH, PICKLE, mark(Meaning.PERFORMED), List.of(new TravellerId("T-1043"))),
                new StepStamped(BENCH, new StepId("final-review"), mark(Meaning.INSPECTED), ""),
                new WindowOpened(BENCH, new WindowLimits(
                        Duration.ofHours(4), Duration.ofHours(24), Duration.ofHours(168))),
                new PassedIn(BENCH),
                new Closed(BENCH));
    }

    private List<TravellerEvent> trouble() {
        return List.of(
                new WindowEnded(SERVER, WindowEnd.RUN_OUT),
                new TouchReported(BENCH, "bare hand"),
                new GlovesSpent(BENCH, "the tablet"),
                new NonconformanceOpened(SERVER, 1, Cause.HOLD_OVERRUN, PICKLE, 2, List.of(1, 2), "longest hold PT3M",
                        Optional.empty()),
                new NonconformanceOpened(BENCH, 2, Cause.INSPECTION_REJECTED, new StepId("final-review"), 1,
                        List.of(1), "blue tint", Optional.of(mark(Meaning.REJECTED))),
                new NonconformanceOpened(BENCH, 3, Cause.SUSPECT, PICKLE, 1, List.of(1, 2), "bath S-ACID-1, fill 12",
                        Optional.of(mark(Meaning.SUSPECTED))),
                new Dispositioned(BENCH, 1, Disposition.USE_AS_IS, "wall measured", mark(Meaning.DISPOSITIONED)),
                new ReturnedToStep(SERVER, PICKLE, "clean window ran out", List.of(PICKLE)),
                new AttemptRefused(BENCH, "put-in-bin", List.of(new AttemptRefused.BrokenRule(
                        "wrong-bin-class", Map.of("bin", "B-0142", "binClass", "SHOP_BIN")))));
    }

    private static Released released() {
        return new Released(BENCH, PARENT, new KitId("K-07"), new PartIdentity("LF-210", "Leg tube", "C"),
                List.of(1, 2, 3, 4), new HeatId("H-9T3381"), new ProcedureRef("TUBE", "A", "ab".repeat(32)),
                List.of(PICKLE, new StepId("final-review")));
    }

    private Signature mark(Meaning meaning) {
        return new Signature(new Signer(new BadgeId("P-0003"), "Ida Quell", List.of(Role.INSPECTOR, Role.LEAD),
                Optional.of("Q-03"), "badge+pin"), meaning, content);
    }
}
