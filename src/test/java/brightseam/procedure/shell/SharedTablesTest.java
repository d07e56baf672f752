package brightseam.procedure.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class SharedTablesTest {

    private static final Vocabulary VOCABULARY = SharedTables.read();

    @ParameterizedTest
    @ValueSource(strings = {"stations", "units", "gloves", "supplies", "cautions", "kept-away",
        "chamber-materials", "session-needs"})
    void every_row_cites_sources_of_its_own_table_and_every_source_is_cited(String table) throws FaultyText {
        JsonNode root = YamlReader.read(SharedFile.text(table + ".yaml")).root();
        List<String> listed = root.path("sources").valueStream().map(source -> source.path("key").asString()).toList();
        List<String> cited = new ArrayList<>();
        for (JsonNode row : root.path(table.replace('-', '_'))) {
            row.path("sources").valueStream().map(JsonNode::asString).forEach(cited::add);
        }
        assertEquals(listed.stream().sorted().toList(), cited.stream().distinct().sorted().toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "procedure", "source", "stations", "units", "gloves", "supplies", "cautions", "kept-away", "line",
        "chamber-materials", "session-needs", "export"})
    void every_schema_is_one_by_the_draft_it_names(String name) {
        String schema = SharedFile.text("schemas/" + name + ".schema.json");
        String draft = SpecificationVersion.DRAFT_2020_12.getDialectId();
        assertTrue(schema.contains("\"$schema\": \"" + draft + "\""));
        assertEquals(List.of(), SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of(draft))
                .validate(schema, InputFormat.JSON));
    }

    @Test
    void stations_cite_cautions_that_exist() {
        VOCABULARY.stations().values().forEach(station ->
                assertTrue(VOCABULARY.cautions().keySet().containsAll(station.cautions()), station.key()));
    }

    @Test
    void acid_gauntlets_never_touch_clean_parts() {
        assertFalse(VOCABULARY.gloves().get("acid-gauntlets").cleanSide());
        assertTrue(VOCABULARY.gloves().get("white-cotton").cleanSide());
        assertTrue(VOCABULARY.gloves().get("clean-nitrile").cleanSide());
    }

    @Test
    void every_kind_of_gloves_is_a_supply_that_touches_what_the_gloves_may() {
        VOCABULARY.gloves().values().forEach(gloves -> assertEquals(gloves.cleanSide(),
                VOCABULARY.supplies().get(gloves.key()).mayTouch().contains(Surface.CLEANED), gloves.key()));
    }

    @Test
    void whatever_says_its_material_names_a_row_of_the_chamber_s_table() throws FaultyText {
        List<String> materials = new ArrayList<>();
        YamlReader.read(SharedFile.text("chamber-materials.yaml")).root().path("chamber_materials")
                .forEach(row -> materials.add(row.path("key").asString()));
        VOCABULARY.supplies().values().forEach(type -> type.material().ifPresent(material ->
                assertTrue(materials.contains(material), type.key() + " of " + material)));
        assertEquals("stainless-steel", VOCABULARY.supplies().get("stainless-fixture").material().orElseThrow());
        assertEquals("cotton", VOCABULARY.supplies().get("white-cotton").material().orElseThrow());
    }

    @Test
    void the_look_is_a_unit() {
        assertTrue(VOCABULARY.units().containsKey(ReadingSpec.PASS_FAIL));
    }

    @Test
    void cautions_defer_to_local_codes_data_sheet_and_licensed_practice() {
        for (String words : List.of("Local codes", "safety data sheet", "licensed practice")) {
            assertTrue(VOCABULARY.safetyNotice().contains(words), words);
        }
        VOCABULARY.cautions().values().forEach(caution ->
                assertFalse((caution.harm() + caution.checks()).contains("is safe"), caution.key()));
    }

    /** 29 CFR 1910.146 (19.5 %), OSHA limit for hydrogen fluoride (3 ppm over a shift), NFPA 484 (no water). */
    @Test
    void cautions_carry_the_published_numbers() {
        assertTrue(VOCABULARY.cautions().get("argon-and-air").harm().contains("19.5 % oxygen"));
        assertTrue(VOCABULARY.cautions().get("hydrofluoric-acid").harm().contains("3 ppm over a shift"));
        assertTrue(VOCABULARY.cautions().get("hydrofluoric-acid").firstAid().contains("calcium gluconate gel"));
        assertTrue(VOCABULARY.cautions().get("titanium-fines").stop().contains("No water"));
    }
}
