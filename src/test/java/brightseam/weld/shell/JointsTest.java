package brightseam.weld.shell;

import static brightseam.weld.Weld.JOINT;
import static brightseam.weld.Weld.KIT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.device.Feed;
import brightseam.device.Meter;
import brightseam.device.Reading;
import brightseam.device.SampleMeters;
import brightseam.device.shell.MeterShop;
import brightseam.device.shell.Readings;
import brightseam.kernel.BadgeId;
import brightseam.kernel.ContactKind;
import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.Samples;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.ledger.shell.TestLedger;
import brightseam.people.Person;
import brightseam.picture.shell.Pictures;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary.SupplyType;
import brightseam.supply.SupplyCommand;
import brightseam.traveller.Disposition;
import brightseam.traveller.shell.Actor;
import brightseam.weld.ArcFacts;
import brightseam.weld.ArcPurpose;
import brightseam.weld.ArcRefusal;
import brightseam.weld.ArgonFact;
import brightseam.weld.BackSideFact;
import brightseam.weld.ChamberFact;
import brightseam.weld.ColoursSeen;
import brightseam.weld.GasEvidence;
import brightseam.weld.GasReading;
import brightseam.weld.Joint;
import brightseam.weld.JointStanding;
import brightseam.weld.Lighting;
import brightseam.weld.Verdict;
import brightseam.weld.Weld;
import brightseam.weld.WeldMap;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** Joints from arc to verdict on a real ledger, a real database and real readings. */
class JointsTest {

    private static final Actor WELDER = new Actor(new BadgeId("P-0007"), "chamber-1");
    private static final Actor INSPECTOR = new Actor(new BadgeId("P-0009"), "desk-1");
    private static final ArcRequest PASS = new ArcRequest(ArcPurpose.WELD, Optional.empty(), true);
    private static final BigDecimal LIMIT = new BigDecimal("20");
    private static final SupplyType LIGHT_METERS = new SupplyType(
            "light-meter", "Light meter", ContactKind.GAUGE, Set.of(Surface.UNCLEANED));

    private final TestLedger database = TestLedger.inMemory(Stream.concat(MeterShop.PROJECTIONS.stream(),
            Stream.<Function<JdbcClient, Projection>>of(Joints::jointProjection)).toArray(Function[]::new));
    private final Ledger ledger = database.ledger();
    private final JdbcClient jdbc = database.jdbc();
    private final Projection projection = Joints.jointProjection(jdbc);
    private final MeterShop shop = new MeterShop(ledger, jdbc);
    private final Meter meter = shop.oxygen(new Feed.Http());
    private final Readings readings = new Readings(ledger, jdbc,
            new JdbcTransactionManager(database.source()), shop.meters(), shop.clock());
    private final ToldRecord told = new ToldRecord();
    private final Joints joints = new Joints(ledger, jdbc, null, new Around(), told, null, shop.supplies(),
            new Pictures(jdbc), Weld.SCALE, shop.clock());
    private final EvidenceWatch watch = new EvidenceWatch(joints, shop.meters(), readings, shop.clock());

    /** The chamber around the joint, at the meter's last reading. */
    private final class Around implements Surroundings {
        @Override
        public Optional<Person> person(BadgeId badge) {
            return Optional.of(Weld.welder());
        }

        @Override
        public Optional<ChamberNow.Inside> inside(JointId joint, Moment now) {
            return Optional.empty();
        }

        @Override
        public ArcFacts facts(JointId id, Optional<Joint> joint, ArcRequest request, Person welder, Moment now) {
            GasReading oxygen = ArcReadings.reading(readings.now(meter.id()), LIMIT);
            ChamberFact chamber = new ChamberFact(Weld.SESSION, KIT, SampleMeters.CHAMBER, List.of(),
                    Optional.of(oxygen), Optional.empty(), Optional.of(new ArgonFact(new SupplyId("A-0005"), "AR-1")),
                    Duration.ofSeconds(5), false);
            return new ArcFacts(Optional.of(new WeldMap.Planned(1, Weld.plan())), Optional.of(chamber), welder,
                    Set.of("weld"), Optional.of(Weld.wire()), new BackSideFact(true, Optional.empty()),
                    Weld.pieces(), Optional.empty(), Optional.empty());
        }

        @Override
        public Optional<String> decided(Joint joint, Disposition disposition) {
            return Optional.empty();
        }
    }

    @AfterEach
    void close() {
        readings.close();
        database.close();
    }

    private void reads(int seconds, IntToDoubleFunction ppm) {
        for (int i = 1; i <= seconds; i++) {
            shop.clock().advance(Duration.ofSeconds(1));
            double value = ppm.applyAsDouble(i);
            if (!Double.isNaN(value)) {
                readings.take(meter.id(), List.of(new Reading(shop.clock().now().elapsedMillis(), value)));
            }
            watch.look();
        }
    }

    private static double steady(int second) {
        return 8 + (second % 2) * 0.4;
    }

    private Joint joint() {
        return joints.find(JOINT).orElseThrow().state();
    }

    private void starts() {
        assertInstanceOf(Outcome.Done.class, joints.startArc(WELDER, JOINT, PASS));
    }

    private void stops() {
        assertInstanceOf(Outcome.Done.class, joints.stopArc(WELDER, JOINT));
    }

    @Test
    void evidence_follows_by_itself_for_the_arc_and_then_for_the_cooling() {
        reads(10, JointsTest::steady);
        starts();
        reads(60, JointsTest::steady);
        stops();
        assertTrue(joint().arcs().getFirst().evidence().isEmpty());
        reads((int) meter.responseTime().toSeconds() + 10, JointsTest::steady);
        GasEvidence arc = joint().arcs().getFirst().evidence().orElseThrow();
        assertTrue(arc.clean());
        assertEquals(new BigDecimal("8.4"), arc.oxygenPpmHighest().orElseThrow());
        assertEquals(new BigDecimal("8.2"), arc.oxygenPpmMean().orElseThrow());
        assertEquals(60 + (int) meter.responseTime().toSeconds() + 1, arc.readings());
        assertEquals(List.of("arc 1", "ARC true"), told.all());
        reads(620, JointsTest::steady);
        assertTrue(joint().isSettled());
        assertEquals(JointStanding.WELDED, joints.view(JOINT).orElseThrow().standing());
        assertEquals(List.of("arc 1", "ARC true", "COOLING true"), told.all());
    }

    @Test
    void an_excursion_names_its_seconds_and_its_peak() {
        reads(10, JointsTest::steady);
        starts();
        reads(60, second -> second >= 20 && second <= 23 ? 55.04 : steady(second));
        stops();
        reads(30, JointsTest::steady);
        GasEvidence arc = joint().arcs().getFirst().evidence().orElseThrow();
        assertFalse(arc.clean());
        assertEquals(new BigDecimal("55.1"), arc.oxygenPpmHighest().orElseThrow());
        assertEquals(1, arc.excursions().size());
        assertTrue(arc.secondsAbove().compareTo(new BigDecimal("3")) > 0
                && arc.secondsAbove().compareTo(new BigDecimal("5")) < 0, arc.secondsAbove().toString());
        assertTrue(joint().isDoubtful());
        assertTrue(told.all().contains("ARC false"));
    }

    @Test
    void a_gap_in_the_readings_leaves_the_stretch_unproven_and_says_from_when_to_when() {
        reads(10, JointsTest::steady);
        starts();
        reads(60, second -> second > 30 && second < 50 ? Double.NaN : steady(second));
        stops();
        reads(30, JointsTest::steady);
        GasEvidence arc = joint().arcs().getFirst().evidence().orElseThrow();
        assertFalse(arc.proven());
        assertEquals(1, arc.gaps().size());
        assertEquals(new BigDecimal("20.0"), arc.gaps().getFirst().seconds());
        assertEquals(List.of(), arc.excursions());
    }

    @Test
    void an_excursion_while_it_cools_is_found_too() {
        reads(10, JointsTest::steady);
        starts();
        reads(60, JointsTest::steady);
        stops();
        reads(630, second -> second == 300 ? 90 : steady(second));
        assertTrue(joint().arcs().getFirst().evidence().orElseThrow().clean());
        assertFalse(joint().arcs().getFirst().cooling().orElseThrow().clean());
        assertEquals(List.of("arc 1", "ARC true", "COOLING false"), told.all());
    }

    @Test
    void an_arc_that_ran_while_the_server_was_down_is_stopped_and_judged_by_what_was_read() {
        reads(10, JointsTest::steady);
        starts();
        reads(30, JointsTest::steady);
        shop.clock().advance(Duration.ofMinutes(3));
        Joints afterRestart = new Joints(ledger, jdbc, null, new Around(), told, null, shop.supplies(),
                new Pictures(jdbc), Weld.SCALE, shop.clock());
        assertEquals(JointStanding.ARC_RUNNING, afterRestart.view(JOINT).orElseThrow().standing());
        assertInstanceOf(Outcome.Done.class, afterRestart.stopArc(WELDER, JOINT));
        reads(30, JointsTest::steady);
        assertFalse(joint().arcs().getFirst().evidence().orElseThrow().proven());
    }

    @Test
    void what_the_travellers_have_against_an_arc_is_told_with_what_the_gas_has() {
        reads(10, second -> 30);
        told.objects(List.of(new ArcRefusal.NoArcRunning(JOINT)));
        assertEquals(List.of("joint-oxygen-too-high", "joint-no-arc-running"),
                joints.objections(WELDER, JOINT, PASS).stream().map(Refusal::code).toList());
        assertInstanceOf(Outcome.Refused.class, joints.startArc(WELDER, JOINT, PASS));
        assertTrue(joints.find(JOINT).isEmpty());
    }

    @Test
    void a_joint_is_judged_in_measured_light_and_rebuilt_rows_are_the_same() {
        reads(10, JointsTest::steady);
        starts();
        reads(60, JointsTest::steady);
        stops();
        reads(630, JointsTest::steady);
        Judging judging = new Judging(Verdict.ACCEPT, new ColoursSeen(true, List.of("silver"), Optional.empty()),
                List.of(), new Lighting(new BigDecimal("1200"), Weld.LIGHT_METER), List.of("0".repeat(64)),
                Optional.empty());
        assertEquals(List.of("supply-unknown", "joint-photographs-not-stored"), codes(joints.judge(
                INSPECTOR, JOINT, judging, Weld.INSPECTOR)));
        assertInstanceOf(Outcome.Done.class, shop.supplies().execute(new SupplyCommand.RegisterSupply(
                Weld.LIGHT_METER, LIGHT_METERS, "Light", "SN-9", "Fennmark", Optional.of(LocalDate.of(2031, 9, 1)),
                Set.of(Surface.UNCLEANED), Samples.ORIGIN)));
        Judging bare = new Judging(Verdict.ACCEPT, judging.colours(), List.of(), judging.lighting(), List.of(),
                Optional.empty());
        assertInstanceOf(Outcome.Done.class, joints.judge(INSPECTOR, JOINT, bare, Weld.INSPECTOR));
        assertEquals("ACCEPT", told.all().getLast());
        Map<String, List<String>> rows = FreshDatabase.rows(jdbc, projection);
        FreshDatabase.rebuild(jdbc, projection, ledger);
        assertEquals(rows, FreshDatabase.rows(jdbc, projection));
        assertEquals(List.of(JOINT), joints.ofSession(Weld.SESSION).stream().map(JointView::id).toList());
    }

    private static List<String> codes(Outcome<Joint> outcome) {
        return assertInstanceOf(Outcome.Refused.class, outcome).refusals().stream()
                .map(refusal -> ((Refusal) refusal).code()).toList();
    }
}
