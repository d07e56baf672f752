package brightseam.chamber.shell;

import static brightseam.chamber.Gear.CHAMBER;
import static brightseam.chamber.Gear.CHEMIST;
import static brightseam.chamber.Gear.FABRICATOR;
import static brightseam.chamber.Gear.LEAD;
import static brightseam.chamber.Gear.LOCK;
import static brightseam.chamber.Gear.decimal;
import static brightseam.chamber.Gear.limit;
import static brightseam.chamber.Gear.terms;
import static brightseam.kernel.Samples.ORIGIN;
import static brightseam.kernel.Samples.origin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.chamber.ChamberCommand;
import brightseam.chamber.ChamberEvent;
import brightseam.chamber.ChamberTerms;
import brightseam.chamber.ConsumptionReport;
import brightseam.chamber.LockGear;
import brightseam.chamber.LockMethod;
import brightseam.chamber.Material;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.SharedTables;
import brightseam.supply.SupplyCommand;
import brightseam.supply.shell.Supplies;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class ChambersTest {

    private static final Vocabulary VOCABULARY = SharedTables.read();
    private static final SupplyId ARGON = new SupplyId("G-0601");

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection rows = Chambers.chamberProjection(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(rows, Supplies.supplyProjection(jdbc));
    private final Supplies supplies = new Supplies(ledger, jdbc);
    private final Chambers chambers = new Chambers(ledger, jdbc, supplies, VOCABULARY);

    private static ConsumptionReport report(String session, Optional<String> content) {
        return new ConsumptionReport(new SessionId(session), decimal("9042"), content.map(value -> decimal(value)),
                Optional.of(decimal("9107")), 42, content.stream()
                        .map(value -> new ConsumptionReport.SourceUse(ARGON, decimal(value))).toList());
    }

    private void done(ChamberCommand command) {
        assertThat(chambers.execute(command)).isInstanceOf(Outcome.Done.class);
    }

    private void tool(String id, String type) {
        assertThat(supplies.execute(new SupplyCommand.RegisterSupply(new SupplyId(id), VOCABULARY.supplies().get(type),
                "The " + type, "N-1", "Kelder", Optional.of(LocalDate.of(2032, 1, 1)),
                VOCABULARY.supplies().get(type).mayTouch(), ORIGIN)))
                .isInstanceOf(Outcome.Done.class);
    }

    @Test
    void what_sessions_used_is_told_latest_first_and_a_rebuild_gives_the_same_rows() {
        done(new ChamberCommand.RegisterChamber(CHAMBER, terms("stainless-steel"), ORIGIN, LEAD));
        done(new ChamberCommand.NoteArgonUsed(CHAMBER, report("CS-0001", Optional.of("9250")), origin(10)));
        done(new ChamberCommand.NoteArgonUsed(CHAMBER, report("CS-0002", Optional.empty()), origin(20)));
        assertThat(chambers.used(CHAMBER, 9)).containsExactly(
                new ArgonUse(origin(20).at().wall(), report("CS-0002", Optional.empty())),
                new ArgonUse(origin(10).at().wall(), report("CS-0001", Optional.of("9250"))));
        assertThat(chambers.all()).containsExactly(chambers.find(CHAMBER).orElseThrow().state());
        assertThat(chambers.ofLock(LOCK)).contains(chambers.find(CHAMBER).orElseThrow().state());
        Map<String, List<String>> before = FreshDatabase.rows(jdbc, rows);
        FreshDatabase.rebuild(jdbc, rows, ledger);
        assertThat(FreshDatabase.rows(jdbc, rows)).isEqualTo(before);
    }

    @Test
    void what_is_taken_along_is_judged_by_the_material_of_its_type() {
        done(new ChamberCommand.RegisterChamber(CHAMBER, terms("stainless-steel", "titanium"), ORIGIN, LEAD));
        tool("G-0701", "stainless-fixture");
        tool("G-0702", "plated-clamp");
        tool("G-0704", "oxygen-analyser");
        assertThat(chambers.objections(CHAMBER, List.of(new SupplyId("G-0701"), new SupplyId("G-0702"),
                new SupplyId("G-0704"), new SupplyId("G-0799")))).extracting(Refusal::code)
                .containsExactly("material-not-permitted", "material-not-stated", "supply-unknown");
        assertThat(chambers.objections(LOCK, List.of())).extracting(Refusal::code)
                .containsExactly("chamber-unknown");
    }

    @Test
    void the_shared_table_permits_stainless_steel_and_never_pvc() {
        assertThat(chambers.materials().find("stainless-steel").orElseThrow().mayBePermitted()).isTrue();
        assertThat(chambers.materials().find("pvc").orElseThrow().mayBePermitted()).isFalse();
        assertThat(chambers.materials().all()).extracting(Material::key).doesNotHaveDuplicates();
    }

    @Test
    void a_change_over_is_not_stored_without_its_sources() {
        assertThatThrownBy(() -> chambers.execute(new ChamberCommand.ChangeOver(
                CHAMBER, Optional.empty(), Optional.of(ARGON), ORIGIN, FABRICATOR))).hasMessageContaining("sources");
    }

    @Test
    void every_event_is_written_as_approved() {
        ChamberTerms terms = terms("stainless-steel", "titanium");
        ChamberTerms sweeping = new ChamberTerms(terms.volumeLitres(), terms.glovePortLitres(),
                new LockGear(LOCK, decimal("40"), LockMethod.sweep(Duration.ofMinutes(12)), limit("100")),
                terms.flows(), terms.limits(), terms.manifold(), terms.usual(), terms.permittedMaterials());
        ApprovedEvents.check("chamber-events.txt", ChamberStreams.TYPES, ChamberStreams.KIND.codec(), List.of(
                new ChamberEvent.Registered(ORIGIN, CHAMBER, terms, LEAD),
                new ChamberEvent.TermsChanged(ORIGIN, CHAMBER, sweeping, "pump away for repair", CHEMIST),
                new ChamberEvent.LeakTested(ORIGIN, CHAMBER, decimal("0.0004"), Optional.of(decimal("0.85")),
                        "rise test over 30 min", CHEMIST),
                new ChamberEvent.ChangedOver(
                        ORIGIN, CHAMBER, Optional.of(new SupplyId("G-0600")), Optional.of(ARGON), FABRICATOR),
                new ChamberEvent.ArgonUsed(ORIGIN, CHAMBER, report("CS-0001", Optional.of("9250"))),
                new ChamberEvent.ArgonUsed(ORIGIN, CHAMBER, report("CS-0002", Optional.empty()))));
    }
}
