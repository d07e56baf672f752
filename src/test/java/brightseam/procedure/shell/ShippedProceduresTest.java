package brightseam.procedure.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.Limits;
import brightseam.kernel.StepId;
import brightseam.procedure.Procedure;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Source;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.ProcedureLoader.Loaded;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The shipped procedures against what is published; each test names its source. */
class ShippedProceduresTest {

    private static final Vocabulary VOCABULARY = SharedTables.read();
    private static final ProcedureLoader LOADER = new ProcedureLoader(VOCABULARY);

    @ParameterizedTest
    @ValueSource(strings = {"tube.yaml", "machined-fitting.yaml", "filler-wire.yaml"})
    void a_shipped_file_has_no_problem_and_puts_the_shop_specification_first(String file) throws IOException {
        Procedure procedure = load(file);
        assertEquals("shop-specification", procedure.sources().getFirst().key());
        assertTrue(procedure.scope().contains("The shop's own specification and the drawing go before"));
        assertTrue(procedure.steps().getLast().isInspectionPoint());
    }

    @Test
    void the_tube_runs_from_the_saw_to_the_record_review() throws IOException {
        assertEquals(List.of("cut", "cope", "deburr", "dimensional-check", "dimensional-inspection",
                "alkaline-degrease", "degrease-rinse", "acid-pickle", "pickle-rinse", "deionised-rinse",
                "water-break-check", "dry",
                "solvent-wipe", "white-cloth-check", "bagging", "readiness-inspection", "pass-in", "weld",
                "weld-inspection", "record-review"),
                load("tube.yaml").route().stream().map(StepId::value).toList());
    }

    /** ASTM B600-91, 4.3.2: nitric acid (70 %) 10 to 30 vol %, hydrofluoric acid (60 %) 1 to 3 vol %, 49 °C. */
    @ParameterizedTest
    @ValueSource(strings = {"tube.yaml", "machined-fitting.yaml"})
    void the_pickle_lies_inside_astm_b600(String file) throws IOException {
        Step pickle = step(file, "acid-pickle");
        assertInside("10", "30", reading(pickle, "nitric-acid").limits());
        assertInside("1", "3", reading(pickle, "hydrofluoric-acid").limits());
        assertTrue(maximum(reading(pickle, "bath-temperature")).compareTo(new BigDecimal("49")) <= 0);
        assertTrue(pickle.sources().contains("astm-b600-91"));
    }

    /** ASTM B600-91, 4.3.2: ten parts nitric acid to one part hydrofluoric acid, at the worst corner of the limits. */
    @ParameterizedTest
    @ValueSource(strings = {"tube.yaml", "machined-fitting.yaml"})
    void every_bath_inside_the_limits_keeps_ten_parts_nitric_to_one(String file) throws IOException {
        Step pickle = step(file, "acid-pickle");
        BigDecimal leastNitric = reading(pickle, "nitric-acid").limits().minimum().orElseThrow();
        BigDecimal mostHydrofluoric = maximum(reading(pickle, "hydrofluoric-acid"));
        assertTrue(leastNitric.compareTo(mostHydrofluoric.multiply(BigDecimal.TEN)) >= 0);
    }

    /** Mill guidance on pre-weld cleaning: 1 to 15 min; a finishing shop: 1 to 5 min. The fitting stays below both. */
    @Test
    void nothing_is_pickled_longer_than_published() throws IOException {
        Duration tube = step("tube.yaml", "acid-pickle").hold().orElseThrow().maximum().orElseThrow();
        Duration fitting = step("machined-fitting.yaml", "acid-pickle").hold().orElseThrow().maximum().orElseThrow();
        assertEquals(Duration.ofMinutes(5), tube);
        assertTrue(fitting.compareTo(tube) < 0);
        assertEquals(Duration.ofMinutes(1), step("tube.yaml", "acid-pickle").hold().orElseThrow().minimum());
    }

    /** ASTM B600-11 (2017), section 2: grease and oil come off before any acid. */
    @ParameterizedTest
    @ValueSource(strings = {"tube.yaml", "machined-fitting.yaml"})
    void grease_comes_off_before_acid(String file) throws IOException {
        Procedure procedure = load(file);
        assertTrue(procedure.position(new StepId("alkaline-degrease")) < procedure.position(new StepId("acid-pickle")));
    }

    /** Engine standard practices manual 70-00-05: rinse water at most 550 µS/cm, deionised for sensitive work 20. */
    @ParameterizedTest
    @ValueSource(strings = {"tube.yaml", "machined-fitting.yaml"})
    void rinses_are_as_pure_as_published(String file) throws IOException {
        String unit = reading(step(file, "deionised-rinse"), "water-conductivity").unit();
        assertEquals("us-per-cm", unit);
        assertEquals(0, maximum(reading(step(file, "deionised-rinse"), "water-conductivity"))
                .compareTo(new BigDecimal("20")));
        for (String rinse : List.of("degrease-rinse", "pickle-rinse")) {
            assertEquals(0, maximum(reading(step(file, rinse), "rinse-conductivity")).compareTo(new BigDecimal("550")));
        }
    }

    /** ASTM F22, from memory: the water film stays whole for about a minute. */
    @ParameterizedTest
    @ValueSource(strings = {"tube.yaml", "machined-fitting.yaml"})
    void the_water_film_is_watched_for_a_minute(String file) throws IOException {
        assertEquals(Duration.ofMinutes(1), step(file, "water-break-check").hold().orElseThrow().minimum());
        assertFalse(source(load(file), "astm-f22").confirmed());
    }

    /** Common practice: 4 to 8 h in the open, 24 h covered, 48 to 72 h sealed; no published limit was found. */
    @ParameterizedTest
    @ValueSource(strings = {"tube.yaml", "machined-fitting.yaml", "filler-wire.yaml"})
    void the_clean_window_is_no_longer_than_common_practice(String file) throws IOException {
        var limits = load(file).window().limits();
        assertTrue(limits.open().compareTo(Duration.ofHours(8)) <= 0);
        assertTrue(limits.closedCleanBin().compareTo(Duration.ofHours(24)) <= 0);
        assertTrue(limits.sealedBag().compareTo(Duration.ofHours(72)) <= 0);
    }

    /** Common practice: acid gauntlets are chlorinated rubber, so gloves change before the last water. */
    @ParameterizedTest
    @ValueSource(strings = {"tube.yaml", "machined-fitting.yaml"})
    void gloves_change_between_the_acid_and_the_clean_side(String file) throws IOException {
        assertEquals("acid-gauntlets", step(file, "pickle-rinse").gloves().orElseThrow());
        Step change = step(file, "deionised-rinse");
        assertTrue(VOCABULARY.gloves().get(change.gloves().orElseThrow()).cleanSide());
        assertTrue(change.instruction().contains("Gauntlets off"));
    }

    /** MIL-STD-2219A, 5.2.2.2 (chlorinated solvents); ASM failure analysis of Apollo SM 101 (methanol). */
    @ParameterizedTest
    @ValueSource(strings = {"tube.yaml", "machined-fitting.yaml", "filler-wire.yaml"})
    void the_wipe_is_acetone_and_nothing_that_cracks_titanium(String file) throws IOException {
        for (Step step : load(file).steps()) {
            String said = (step.instruction() + step.needs() + step.uses()).toLowerCase(Locale.ROOT);
            assertFalse(said.contains("methanol") || said.contains("trichlor"), step.title());
            assertTrue(step.kind() != StepKind.WIPE || said.contains("acetone"), step.title());
        }
    }

    /** Only sources that were read are marked as confirmed. */
    @ParameterizedTest
    @ValueSource(strings = {"tube.yaml", "machined-fitting.yaml", "filler-wire.yaml"})
    void what_comes_from_memory_or_practice_is_not_marked_as_confirmed(String file) throws IOException {
        for (Source source : load(file).sources()) {
            boolean open = source.title().contains("from memory") || source.title().equals("common practice");
            assertFalse(open && source.confirmed(), source.title());
        }
    }

    private static void assertInside(String low, String high, Limits limits) {
        assertTrue(limits.minimum().orElseThrow().compareTo(new BigDecimal(low)) >= 0);
        assertTrue(limits.maximum().orElseThrow().compareTo(new BigDecimal(high)) <= 0);
    }

    private static BigDecimal maximum(ReadingSpec reading) {
        return reading.limits().maximum().orElseThrow();
    }

    private static ReadingSpec reading(Step step, String id) {
        return step.readings().stream().filter(reading -> reading.id().equals(id)).findFirst().orElseThrow();
    }

    private static Source source(Procedure procedure, String key) {
        return procedure.sources().stream().filter(source -> source.key().equals(key)).findFirst().orElseThrow();
    }

    private static Step step(String file, String id) throws IOException {
        return load(file).step(new StepId(id));
    }

    private static Procedure load(String file) throws IOException {
        return assertInstanceOf(Loaded.class, LOADER.load(file, Files.readAllBytes(Path.of("procedures", file))))
                .procedure();
    }
}
