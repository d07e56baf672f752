package brightseam.chamber.shell;

import static brightseam.chamber.Gear.BUNDLE;
import static brightseam.chamber.Gear.CHAMBER;
import static brightseam.chamber.Gear.DEWAR;
import static brightseam.chamber.Gear.FABRICATOR;
import static brightseam.chamber.Gear.LEAD;
import static brightseam.chamber.Gear.PURE;
import static brightseam.chamber.Gear.at;
import static brightseam.chamber.Gear.decimal;
import static brightseam.chamber.Gear.terms;
import static brightseam.kernel.Samples.ORIGIN;
import static brightseam.kernel.Samples.origin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.chamber.ArgonCommand;
import brightseam.chamber.ArgonDemand;
import brightseam.chamber.ArgonEvent;
import brightseam.chamber.ArgonLeft;
import brightseam.chamber.ArgonNeed;
import brightseam.chamber.ArgonReading;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.ArgonVessel;
import brightseam.chamber.Chamber;
import brightseam.chamber.ChamberCommand;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.SharedTables;
import brightseam.supply.Standing;
import brightseam.supply.SupplyCommand;
import brightseam.supply.shell.Supplies;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class ArgonStoreTest {

    private static final Vocabulary VOCABULARY = SharedTables.read();
    private static final LocalDate LAST_DAY = LocalDate.of(2032, 3, 1);

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection argon = ArgonStore.argonProjection(jdbc);
    private final MemoryLedger ledger =
            new MemoryLedger(argon, Chambers.chamberProjection(jdbc), Supplies.supplyProjection(jdbc));
    private final Supplies supplies = new Supplies(ledger, jdbc);
    private final Chambers chambers = new Chambers(ledger, jdbc, supplies, VOCABULARY);
    private final ArgonStore store = new ArgonStore(ledger, jdbc, chambers, supplies);
    private final ArgonWatch watch = new ArgonWatch(chambers, store, new NoGauges());

    private void shop() {
        done(chambers.execute(new ChamberCommand.RegisterChamber(CHAMBER, terms("stainless-steel"), ORIGIN, LEAD)));
        deliver(BUNDLE, ArgonVessel.bundle(decimal("600"), decimal("200")), pressure(0, "180"), LAST_DAY);
        deliver(DEWAR, ArgonVessel.dewar(decimal("180"), decimal("2")), ArgonReading.level(at(0), decimal("90")),
                LAST_DAY);
    }

    private void deliver(SupplyId id, ArgonVessel vessel, ArgonReading reading, LocalDate lastDay) {
        done(store.deliver(new SupplyCommand.RegisterSupply(id,
                VOCABULARY.supplies().get(vessel.form().supplyType()), "Argon", "L-31", "Aether Gases",
                Optional.of(lastDay), Set.of(Surface.values()), ORIGIN),
                new ArgonCommand.Deliver(id, vessel, PURE, Optional.of(reading), ORIGIN)));
    }

    private Outcome<Chamber> over(SupplyId off, SupplyId on) {
        return store.changeOver(new ChangeOverOrder(CHAMBER, Optional.ofNullable(off), Optional.ofNullable(on),
                Optional.empty(), Optional.empty(), false), origin(60), FABRICATOR);
    }

    private static ArgonReading pressure(long second, String bar) {
        return ArgonReading.pressure(at(second), decimal(bar), decimal("15"));
    }

    private static <R> R done(Outcome<R> outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Done.class);
        return ((Outcome.Done<R>) outcome).result();
    }

    private static List<String> refused(Outcome<?> outcome) {
        return ((Outcome.Refused<?>) outcome).refusals().stream().map(Refusal::code).toList();
    }

    private ArgonSource source(SupplyId id) {
        return store.find(id).orElseThrow().state();
    }

    @Test
    void a_change_over_is_one_append_of_chamber_sources_and_readings() {
        shop();
        done(over(null, BUNDLE));
        int before = ledger.readAllAfter(0, Integer.MAX_VALUE).size();
        Chamber chamber = done(store.changeOver(new ChangeOverOrder(CHAMBER, Optional.of(BUNDLE), Optional.of(DEWAR),
                Optional.of(pressure(100, "6")), Optional.of(ArgonReading.level(at(100), decimal("89"))), true),
                origin(120), FABRICATOR));
        assertThat(chamber.connected()).containsExactly(DEWAR);
        assertThat(source(BUNDLE).standing()).isEqualTo(ArgonSource.Standing.EMPTY);
        assertThat(source(BUNDLE).last()).contains(pressure(100, "6"));
        assertThat(source(DEWAR).connectedTo()).contains(CHAMBER);
        assertThat(supplies.find(BUNDLE).orElseThrow().state().standing()).isEqualTo(Standing.USED_UP);
        assertThat(ledger.readAllAfter(before, Integer.MAX_VALUE)).extracting(entry -> entry.type())
                .containsExactlyInAnyOrder("chamber-argon-changed-over.1", "argon-read.1", "argon-disconnected.1",
                        "argon-emptied.1", "supply-used-up.1", "argon-read.1", "argon-connected.1");
    }

    @Test
    void a_change_over_that_breaks_a_rule_stores_nothing_and_names_every_rule() {
        shop();
        int before = ledger.readAllAfter(0, Integer.MAX_VALUE).size();
        assertThat(refused(over(BUNDLE, new SupplyId("G-0699")))).containsExactlyInAnyOrder(
                "argon-not-connected-here", "supply-unknown");
        assertThat(ledger.readAllAfter(0, Integer.MAX_VALUE)).hasSize(before);
        assertThat(refused(store.changeOver(new ChangeOverOrder(new StationId("S-9"), Optional.of(BUNDLE),
                Optional.empty(), Optional.empty(), Optional.empty(), false), ORIGIN, FABRICATOR)))
                .containsExactly("chamber-unknown");
    }

    @Test
    void argon_out_of_date_or_contaminated_is_not_connected_and_does_not_stand_by() {
        shop();
        SupplyId old = new SupplyId("G-0603");
        deliver(old, ArgonVessel.bundle(decimal("600"), decimal("200")), pressure(0, "180"),
                LocalDate.of(2031, 3, 3));
        done(supplies.execute(new SupplyCommand.ReportContaminated(DEWAR, "air drawn in at the valve", ORIGIN)));
        assertThat(refused(over(null, old))).containsExactly("supply-expired");
        assertThat(refused(over(null, DEWAR))).containsExactly("supply-contaminated");
        assertThat(watch.left(CHAMBER, at(60))).extracting(ArgonLeft::supply).containsExactly(BUNDLE);
    }

    @Test
    void what_is_left_tells_connected_sources_first() {
        shop();
        done(over(null, BUNDLE));
        assertThat(watch.left(CHAMBER, at(60))).extracting(ArgonLeft::supply).containsExactly(BUNDLE, DEWAR);
        assertThat(watch.left(CHAMBER, at(60))).extracting(ArgonLeft::connected).containsExactly(true, false);
        assertThat(watch.left(new StationId("S-9"), at(60))).isEmpty();
    }

    @Test
    void the_outlook_takes_the_usual_session_where_nobody_says_more() {
        shop();
        done(over(null, BUNDLE));
        var usual = watch.outlook(CHAMBER, Optional.empty(), Optional.empty(), at(60))
                .orElseThrow();
        assertThat(usual.objections()).isEmpty();
        assertThat(((ArgonNeed.Needed) usual.need()).fit()).hasHours(3);
        var long1 = watch.outlook(CHAMBER, Optional.of(Duration.ofDays(40)), Optional.of(0),
                at(60)).orElseThrow();
        assertThat(long1.objections()).extracting(Refusal::code).containsExactly("argon-too-little");
        assertThat(watch.forecast(CHAMBER, List.of(new ArgonDemand(Optional.empty(), Optional.empty(),
                at(60).wall(), (ArgonNeed.Needed) usual.need())), at(60)).sessionsLeft()).isEqualTo(1);
    }

    @Test
    void one_label_is_one_source_and_one_supply_of_the_same_form() {
        shop();
        assertThat(refused(store.deliver(new SupplyCommand.RegisterSupply(BUNDLE,
                VOCABULARY.supplies().get("argon-bundle"), "Argon", "L-31", "Aether Gases", Optional.empty(),
                Set.of(Surface.values()), ORIGIN), new ArgonCommand.Deliver(BUNDLE,
                ArgonVessel.bundle(decimal("600"), decimal("200")), PURE, Optional.empty(), ORIGIN))))
                .containsExactly("supply-already-registered", "argon-already-delivered");
        assertThatThrownBy(() -> deliver(new SupplyId("G-0604"), ArgonVessel.cylinder(decimal("50"), decimal("200")),
                ArgonReading.level(at(0), decimal("1")), LAST_DAY)).isInstanceOf(AssertionError.class);
        assertThat(supplies.find(new SupplyId("G-0604"))).isEmpty();
    }

    @Test
    void rows_follow_the_ledger_and_a_corrected_reading_takes_the_place_of_the_wrong_one() {
        shop();
        done(store.execute(new ArgonCommand.EnterReading(BUNDLE, pressure(60, "17.5"), false, origin(60))));
        done(store.execute(new ArgonCommand.EnterReading(BUNDLE, pressure(90, "175"), true, origin(90))));
        done(store.execute(new ArgonCommand.Retire(DEWAR, "jacket frosted over", origin(120))));
        assertThat(store.readings(BUNDLE, 9)).containsExactly(pressure(90, "175"), pressure(0, "180"));
        assertThat(store.all()).containsExactly(source(BUNDLE), source(DEWAR));
        assertThat(store.usable(at(120))).extracting(ArgonSource::id).containsExactly(BUNDLE);
        Map<String, List<String>> rows = FreshDatabase.rows(jdbc, argon);
        FreshDatabase.rebuild(jdbc, argon, ledger);
        assertThat(FreshDatabase.rows(jdbc, argon)).isEqualTo(rows);
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("argon-events.txt", ArgonStreams.TYPES, ArgonStreams.KIND.codec(), List.of(
                new ArgonEvent.Delivered(ORIGIN, BUNDLE, ArgonVessel.bundle(decimal("600"), decimal("200")), PURE,
                        Optional.of(pressure(0, "180"))),
                new ArgonEvent.Delivered(ORIGIN, DEWAR, ArgonVessel.dewar(decimal("180"), decimal("1.8")), PURE,
                        Optional.empty()),
                new ArgonEvent.Read(ORIGIN, BUNDLE, pressure(60, "175.5"), true),
                new ArgonEvent.Read(ORIGIN, DEWAR, ArgonReading.level(at(60), decimal("88"))
                        .by(new SupplyId("G-0452")), false),
                new ArgonEvent.Connected(ORIGIN, BUNDLE, CHAMBER, FABRICATOR),
                new ArgonEvent.Disconnected(ORIGIN, BUNDLE, CHAMBER, FABRICATOR),
                new ArgonEvent.Emptied(ORIGIN, BUNDLE),
                new ArgonEvent.Retired(ORIGIN, DEWAR, "jacket frosted over")));
    }
}
