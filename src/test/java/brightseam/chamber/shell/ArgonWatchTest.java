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
import static org.assertj.core.api.Assertions.within;

import brightseam.chamber.ArgonCommand;
import brightseam.chamber.ArgonReading;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.ArgonVessel;
import brightseam.chamber.Chamber;
import brightseam.chamber.ChamberCommand;
import brightseam.chamber.Consumption;
import brightseam.chamber.ConsumptionReport;
import brightseam.device.MeterQuantity;
import brightseam.device.Reading;
import brightseam.device.Series;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.SharedTables;
import brightseam.supply.SupplyCommand;
import brightseam.supply.shell.Supplies;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class ArgonWatchTest {

    private static final Vocabulary VOCABULARY = SharedTables.read();
    private static final SupplyId METER = new SupplyId("G-0505");
    private static final SessionId SESSION = new SessionId("CS-0012");
    private static final long HOUR = 3600;

    /** Meters of the supply whose values the test writes down. */
    private static final class WrittenGauges implements ArgonGauges {
        private final Map<MeterQuantity, List<Gauged>> values = new EnumMap<>(MeterQuantity.class);
        private final List<Series> flows = new ArrayList<>();

        void says(MeterQuantity quantity, long second, double value) {
            values.computeIfAbsent(quantity, any -> new ArrayList<>()).add(new Gauged(METER, 1000 * second, value));
        }

        @Override
        public Optional<Gauged> now(StationId chamber, MeterQuantity quantity) {
            return lastIn(chamber, quantity, 0, Long.MAX_VALUE);
        }

        @Override
        public Optional<Gauged> lastIn(StationId chamber, MeterQuantity quantity, long fromMillis, long toMillis) {
            return values.getOrDefault(quantity, List.of()).reversed().stream()
                    .filter(one -> one.elapsedMillis() >= fromMillis && one.elapsedMillis() <= toMillis).findFirst();
        }

        @Override
        public List<Series> flows(Chamber chamber, long fromMillis, long toMillis) {
            return flows;
        }
    }

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final MemoryLedger ledger = new MemoryLedger(ArgonStore.argonProjection(jdbc),
            Chambers.chamberProjection(jdbc), Supplies.supplyProjection(jdbc));
    private final Supplies supplies = new Supplies(ledger, jdbc);
    private final Chambers chambers = new Chambers(ledger, jdbc, supplies, VOCABULARY);
    private final ArgonStore store = new ArgonStore(ledger, jdbc, chambers, supplies);
    private final WrittenGauges gauges = new WrittenGauges();
    private final ArgonWatch watch = new ArgonWatch(chambers, store, gauges);

    @BeforeEach
    void shop() {
        done(chambers.execute(new ChamberCommand.RegisterChamber(CHAMBER, terms("stainless-steel"), ORIGIN, LEAD)));
        deliver(BUNDLE, ArgonVessel.bundle(decimal("600"), decimal("200")), pressure(0, "180"));
        deliver(DEWAR, ArgonVessel.dewar(decimal("180"), decimal("2")), ArgonReading.level(at(0), decimal("90")));
        over(0, null, BUNDLE);
    }

    private void deliver(SupplyId id, ArgonVessel vessel, ArgonReading reading) {
        done(store.deliver(new SupplyCommand.RegisterSupply(id,
                VOCABULARY.supplies().get(vessel.form().supplyType()), "Argon", "L-31", "Aether Gases",
                Optional.empty(), Set.of(Surface.values()), ORIGIN),
                new ArgonCommand.Deliver(id, vessel, PURE, Optional.of(reading), ORIGIN)));
    }

    private void over(long second, SupplyId off, SupplyId on) {
        done(watch.changeOver(new ChangeOverOrder(CHAMBER, Optional.ofNullable(off), Optional.ofNullable(on),
                Optional.empty(), Optional.empty(), false), origin(second), FABRICATOR));
    }

    private void read(SupplyId id, ArgonReading reading) {
        done(store.execute(new ArgonCommand.EnterReading(id, reading, false,
                origin(reading.at().elapsedMillis() / 1000))));
    }

    private ConsumptionReport count(long from, long to) {
        return watch.count(CHAMBER, SESSION, decimal("9000"), at(from), at(to)).orElseThrow();
    }

    private ArgonSource source(SupplyId id) {
        return store.find(id).orElseThrow().state();
    }

    private static ArgonReading pressure(long second, String bar) {
        return ArgonReading.pressure(at(second), decimal(bar), decimal("15"));
    }

    private static <R> R done(Outcome<R> outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Done.class);
        return ((Outcome.Done<R>) outcome).result();
    }

    @Test
    void a_meter_in_the_supply_tells_of_the_only_source_of_its_form() {
        gauges.says(MeterQuantity.PRESSURE_BAR, 60, 171.2);
        gauges.says(MeterQuantity.TEMPERATURE_CELSIUS, 60, 18.5);
        ArgonReading read = watch.asRead(source(BUNDLE), at(70)).last().orElseThrow();
        assertThat(read.pressureBarGauge().orElseThrow()).isEqualByComparingTo("171.2");
        assertThat(read.temperatureCelsius().orElseThrow()).isEqualByComparingTo("18.5");
        assertThat(read.at()).isEqualTo(at(60));
        assertThat(read.meter()).contains(METER);
        assertThat(watch.asRead(source(DEWAR), at(70))).isEqualTo(source(DEWAR));
    }

    @Test
    void of_two_sources_of_one_form_a_meter_tells_nothing() {
        SupplyId second = new SupplyId("G-0603");
        deliver(second, ArgonVessel.bundle(decimal("600"), decimal("200")), pressure(0, "190"));
        over(30, null, second);
        gauges.says(MeterQuantity.PRESSURE_BAR, 60, 171.2);
        assertThat(watch.asRead(source(BUNDLE), at(70))).isEqualTo(source(BUNDLE));
    }

    @Test
    void a_reading_newer_than_the_meter_s_value_stands() {
        gauges.says(MeterQuantity.PRESSURE_BAR, 60, 171.2);
        read(BUNDLE, pressure(120, "165"));
        assertThat(watch.asRead(source(BUNDLE), at(130)).last()).contains(pressure(120, "165"));
    }

    @Test
    void what_the_meter_says_of_a_source_that_comes_off_is_stored_with_it() {
        gauges.says(MeterQuantity.PRESSURE_BAR, 60, 12.34);
        over(65, BUNDLE, DEWAR);
        assertThat(source(BUNDLE).last().orElseThrow().pressureBarGauge().orElseThrow())
                .isEqualByComparingTo("12.34");
        assertThat(store.readings(BUNDLE, 1).getFirst().meter()).contains(METER);
    }

    @Test
    void a_session_is_counted_by_what_was_read_before_and_after_it() {
        read(BUNDLE, pressure(HOUR, "150"));
        read(BUNDLE, pressure(4 * HOUR, "135"));
        ConsumptionReport report = count(HOUR + 60, 4 * HOUR - 60);
        double held = Consumption.byContent(source(BUNDLE).vessel(), pressure(0, "150"), pressure(0, "135"));
        assertThat(report.byContentStandardLitres().orElseThrow().doubleValue()).isCloseTo(held, within(0.51));
        assertThat(report.byFlowStandardLitres()).isEmpty();
        assertThat(report.unprovenSeconds()).isEqualTo(3 * HOUR - 120);
    }

    @Test
    void a_change_over_in_the_middle_counts_both_sources() {
        gauges.says(MeterQuantity.PRESSURE_BAR, HOUR, 20);
        gauges.says(MeterQuantity.PRESSURE_BAR, 2 * HOUR - 1, 8);
        over(2 * HOUR, BUNDLE, DEWAR);
        gauges.says(MeterQuantity.LEVEL_PERCENT, 2 * HOUR, 88);
        gauges.says(MeterQuantity.LEVEL_PERCENT, 3 * HOUR, 86.5);
        ConsumptionReport report = count(HOUR, 3 * HOUR);
        assertThat(report.sources()).extracting(ConsumptionReport.SourceUse::supply).containsExactly(BUNDLE, DEWAR);
        assertThat(report.sources().getLast().standardLitres().doubleValue())
                .isCloseTo(180 * 825 * 0.015, within(15.0));
        assertThat(report.byContentStandardLitres().orElseThrow()).isEqualByComparingTo(report.sources().stream()
                .map(ConsumptionReport.SourceUse::standardLitres).reduce((one, other) -> one.add(other)).orElseThrow());
    }

    @Test
    void a_source_that_nobody_read_leaves_the_count_by_content_open() {
        gauges.says(MeterQuantity.PRESSURE_BAR, HOUR, 20);
        ConsumptionReport report = count(HOUR, 2 * HOUR);
        assertThat(report.byContentStandardLitres()).isEmpty();
        assertThat(report.sources()).isEmpty();
        assertThat(report.differencePercent()).isEmpty();
    }

    @Test
    void flow_is_counted_where_meters_told_it_and_the_rest_is_said() {
        List<Reading> readings = new ArrayList<>();
        for (long second = HOUR; second <= HOUR + 1800; second += 10) {
            readings.add(new Reading(1000 * second, 60));
        }
        gauges.flows.add(Series.of(readings));
        ConsumptionReport report = count(HOUR, 2 * HOUR);
        assertThat(report.byFlowStandardLitres().orElseThrow().doubleValue())
                .isCloseTo(60 * 30 * 288.15 / 293.15, within(1.0));
        assertThat(report.unprovenSeconds()).isEqualTo(1800);
    }
}
