package brightseam.traveller;

import static brightseam.procedure.BinClass.CLEAN_BIN;
import static brightseam.procedure.BinClass.PROCESS_BASKET;
import static brightseam.procedure.BinClass.SEALED_BAG;
import static brightseam.procedure.BinClass.SHOP_BIN;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Limits;
import brightseam.kernel.StepId;
import brightseam.procedure.BinClass;
import brightseam.procedure.CleanWindow;
import brightseam.procedure.Gap;
import brightseam.procedure.Hold;
import brightseam.procedure.Mix;
import brightseam.procedure.Procedure;
import brightseam.procedure.ProcedureRef;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.procedure.Use;
import brightseam.procedure.WindowLimits;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A short procedure with every kind of step; its values are made up for the tests and belong to no real process. */
final class TestProcedures {

    private static final Use CHANGE = new Use(ContactKind.GLOVES, "clean-room", true);

    private TestProcedures() {}

    /** From the saw to the last review; the window opens with {@code wipe} and is closed by {@code pass-in}. */
    static Procedure tube() {
        List<Step> steps = new ArrayList<>(shaping());
        steps.addAll(cleaning());
        steps.addAll(closing());
        return procedure(steps);
    }

    /** The same with one step changed. */
    static Procedure tubeWith(Step changed) {
        return procedure(tube().steps().stream()
                .map(step -> step.id().equals(changed.id()) ? changed : step).toList());
    }

    /** {@code step} with other bins, signer and readings. */
    static Step altered(Step step, Set<BinClass> bins, SignedBy signedBy, List<ReadingSpec> readings) {
        return new Step(step.id(), step.number(), step.title(), step.kind(), step.station(), step.instruction(),
                step.cautions(), bins, step.gloves(), step.needs(), step.uses(), step.hold(), step.gap(), readings,
                signedBy,
                step.reworkTo(), step.sources(), step.mix(), step.inSession());
    }

    /** The same tube where the chamber's session passes in and welds, and the clean window ends with the welding. */
    static Procedure welded() {
        List<Step> steps = new ArrayList<>(shaping());
        steps.addAll(cleaning());
        steps.addAll(closing().stream().filter(step -> step.number() < 130).toList());
        steps.addAll(List.of(
                Draft.of("pass-in", StepKind.PASS_IN, "transfer-lock", CLEAN_BIN, SEALED_BAG).gloves("clean-room")
                        .uses(CHANGE).inSession().reworkTo("wipe").step(130),
                Draft.of("weld", StepKind.WELD, "chamber").inSession().reworkTo("wipe").step(140),
                Draft.of("weld-inspection", StepKind.INSPECTION, "bench").by(SignedBy.INSPECTOR)
                        .reworkTo("weld", "wipe").step(150),
                Draft.of("final-review", StepKind.INSPECTION, "bench").by(SignedBy.INSPECTOR)
                        .reworkTo("wipe", "degrease").step(160)));
        return procedure(steps, "weld");
    }

    /** Up to the lock, in a session, and then {@code review} alone: nothing of it is welded by itself. */
    static Procedure filler(Step review) {
        List<Step> steps = new ArrayList<>(welded().steps().stream().filter(step -> step.number() <= 130).toList());
        steps.add(review);
        return procedure(steps);
    }

    private static Procedure procedure(List<Step> steps) {
        return procedure(steps, "pass-in");
    }

    private static Procedure procedure(List<Step> steps, String closedBy) {
        CleanWindow window = new CleanWindow(new StepId("wipe"), new StepId(closedBy),
                new WindowLimits(Duration.ofHours(4), Duration.ofHours(24), Duration.ofHours(168)),
                Duration.ofMinutes(30), new StepId("wipe"));
        return new Procedure(new ProcedureRef("TUBE", "A", "5e".repeat(32)), "Leg tube", "Tests only",
                List.of("2", "9"), steps, window, new StepId("degrease"), List.of());
    }

    private static List<Step> shaping() {
        return List.of(
                Draft.of("cut", StepKind.WORK, "saw", SHOP_BIN).cautions("titanium-fines")
                        .reading("length", "mm", "99.5", "100.5", false).step(10),
                Draft.of("dimension", StepKind.INSPECTION, "bench", SHOP_BIN).by(SignedBy.INSPECTOR)
                        .reading("diameter", "mm", "24.9", "25.1", false)
                        .reading("wall", "mm", "1.1", "1.3", false).reworkTo("cut").step(20));
    }

    private static List<Step> cleaning() {
        return List.of(
                Draft.of("degrease", StepKind.SOAK, "alkaline-tank", PROCESS_BASKET).gloves("nitrile")
                        .hold(Duration.ofMinutes(5), Duration.ofMinutes(10))
                        .reading("bath-temperature", "degC", "55", "65", true).reworkTo("degrease", "cut").step(30),
                Draft.of("first-rinse", StepKind.RINSE, "rinse-tank", PROCESS_BASKET)
                        .hold(Duration.ofMinutes(2), null).gap(Duration.ofMinutes(5)).reworkTo("degrease").step(40),
                Draft.of("pickle", StepKind.SOAK, "pickle-tank", PROCESS_BASKET).gloves("acid gauntlets")
                        .cautions("hydrofluoric-acid").hold(Duration.ofMinutes(1), Duration.ofMinutes(3))
                        .reading("acid-temperature", "degC", "20", "40", true).gap(Duration.ofSeconds(60))
                        .reworkTo("degrease", "pickle").step(50),
                Draft.of("acid-rinse", StepKind.RINSE, "rinse-tank", PROCESS_BASKET)
                        .hold(Duration.ofMinutes(2), null).reworkTo("acid-rinse").step(60),
                Draft.of("di-rinse", StepKind.RINSE, "di-tank", PROCESS_BASKET).hold(Duration.ofMinutes(1), null)
                        .reading("conductivity", "uS/cm", "0", "5", false).reworkTo("acid-rinse", "degrease").step(70),
                Draft.of("water-break", StepKind.CHECK, "bench", PROCESS_BASKET).passFail("film-whole")
                        .reworkTo("degrease", "pickle").step(80),
                Draft.of("dry", StepKind.DRY, "dryer", PROCESS_BASKET).hold(Duration.ofMinutes(10), null).step(90));
    }

    private static List<Step> closing() {
        return List.of(
                Draft.of("wipe", StepKind.WIPE, "wipe-bench", CLEAN_BIN).gloves("clean-room")
                        .uses(CHANGE, new Use(ContactKind.WIPES, "lint-free-cloth", false),
                                new Use(ContactKind.SOLVENT, "acetone", false)).step(100),
                Draft.of("white-cloth", StepKind.CHECK, "wipe-bench", CLEAN_BIN).passFail("cloth-clean")
                        .reworkTo("wipe", "degrease").step(110),
                Draft.of("bagging", StepKind.WORK, "wipe-bench", SEALED_BAG).gloves("clean-room")
                        .uses(new Use(ContactKind.GLOVES, "clean-room", false)).reworkTo("wipe").step(120),
                Draft.of("pass-in", StepKind.PASS_IN, "transfer-lock", CLEAN_BIN, SEALED_BAG).by(SignedBy.LEAD)
                        .reworkTo("wipe").step(130),
                Draft.of("weld", StepKind.WELD, "chamber").reading("oxygen", "ppm", "0", "50", false)
                        .reworkTo("wipe", "weld").step(140),
                Draft.of("final-review", StepKind.INSPECTION, "bench").by(SignedBy.INSPECTOR)
                        .reworkTo("weld", "wipe", "degrease").step(150));
    }

    /** A step being written. */
    private static final class Draft {
        private final String id;
        private final StepKind kind;
        private final String station;
        private final Set<BinClass> bins = EnumSet.noneOf(BinClass.class);
        private final List<ReadingSpec> readings = new ArrayList<>();
        private List<String> cautions = List.of();
        private List<StepId> reworkTo = List.of();
        private Optional<String> gloves = Optional.empty();
        private List<Use> uses = List.of();
        private Optional<Hold> hold = Optional.empty();
        private Optional<Gap> gap = Optional.empty();
        private SignedBy signedBy = SignedBy.FABRICATOR;
        private boolean inSession;

        private Draft(String id, StepKind kind, String station) {
            this.id = id;
            this.kind = kind;
            this.station = station;
        }

        static Draft of(String id, StepKind kind, String station, BinClass... bins) {
            Draft draft = new Draft(id, kind, station);
            draft.bins.addAll(List.of(bins));
            return draft;
        }

        Draft cautions(String... keys) {
            cautions = List.of(keys);
            return this;
        }

        Draft gloves(String which) {
            gloves = Optional.of(which);
            return this;
        }

        Draft uses(Use... what) {
            uses = List.of(what);
            return this;
        }

        Draft inSession() {
            inSession = true;
            return this;
        }

        Draft by(SignedBy who) {
            signedBy = who;
            return this;
        }

        Draft hold(Duration minimum, Duration maximum) {
            hold = Optional.of(new Hold(minimum, Optional.ofNullable(maximum)));
            return this;
        }

        Draft gap(Duration maximum) {
            gap = Optional.of(new Gap(maximum, "acid keeps etching"));
            return this;
        }

        Draft reading(String name, String unit, String low, String high, boolean beforeHold) {
            readings.add(new ReadingSpec(name, name, unit, new Limits(
                    Optional.of(new BigDecimal(low)), Optional.of(new BigDecimal(high))), 2, beforeHold));
            return this;
        }

        Draft passFail(String name) {
            readings.add(new ReadingSpec(name, name, ReadingSpec.PASS_FAIL, new Limits(
                    Optional.of(BigDecimal.ONE), Optional.of(BigDecimal.ONE)), 0, false));
            return this;
        }

        Draft reworkTo(String... steps) {
            reworkTo = List.of(steps).stream().map(StepId::new).toList();
            return this;
        }

        Step step(int number) {
            return new Step(new StepId(id), number, id, kind, station, "as told", cautions, bins, gloves, List.of(),
                    uses, hold, gap, readings, signedBy, reworkTo, List.of(), Mix.ANY, inSession);
        }
    }
}
