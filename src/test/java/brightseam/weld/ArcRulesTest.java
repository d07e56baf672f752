package brightseam.weld;

import static brightseam.weld.Weld.JOINT;
import static brightseam.weld.Weld.KIT;
import static brightseam.weld.Weld.OXYGEN_METER;
import static brightseam.weld.Weld.facts;
import static brightseam.weld.Weld.fit;
import static brightseam.weld.Weld.good;
import static brightseam.weld.Weld.oxygen;
import static brightseam.weld.Weld.pieces;
import static brightseam.weld.Weld.plan;
import static brightseam.weld.Weld.wire;
import static org.junit.jupiter.api.Assertions.assertEquals;

import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.people.Person;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ArcRulesTest {

    private static final BackSideFact CONFIRMED = new BackSideFact(true, Optional.empty());
    private final Weld weld = new Weld();

    private List<Refusal> against(ArcFacts facts) {
        return against(ArcPurpose.WELD, facts);
    }

    private List<Refusal> against(ArcPurpose purpose, ArcFacts facts) {
        return JointDecider.objections(JOINT, weld.known(), purpose, facts, weld.now());
    }

    private static ArcFacts in(ChamberFact chamber) {
        return facts(plan(), chamber, Optional.of(wire()), CONFIRMED, pieces());
    }

    private static ArcFacts with(Optional<FillerFact> filler) {
        return facts(plan(), fit(), filler, CONFIRMED, pieces());
    }

    private static ArcFacts behind(BackSideFact back) {
        return facts(plan(), fit(), Optional.of(wire()), back, pieces());
    }

    private static ArcFacts by(Person welder, Optional<JointId> elsewhere) {
        return new ArcFacts(good().planned(), good().chamber(), welder, Set.of("weld"), good().filler(),
                good().backSide(), pieces(), elsewhere, Optional.empty());
    }

    @Test
    void an_arc_is_struck_where_nothing_stands_against_it_and_says_under_what() {
        assertEquals(List.of(), against(good()));
        Arc arc = weld.starts(ArcPurpose.WELD).state().running().orElseThrow();
        assertEquals(OXYGEN_METER, arc.setting().oxygen().meter());
        assertEquals(new BigDecimal("8.2"), arc.setting().oxygen().ppm().orElseThrow());
        assertEquals(List.of(Weld.LEG, Weld.LUG), arc.setting().travellers());
        assertEquals(Optional.of("T-1050"), arc.setting().filler());
        assertEquals("AR-7781", arc.setting().argon().lot());
    }

    @Test
    void oxygen_at_the_limit_is_fine_and_above_it_is_not() {
        assertEquals(List.of(), against(in(Weld.chamber(List.of(), Optional.of(oxygen("20"))))));
        assertEquals(List.of(new ArcRefusal.OxygenTooHigh(
                        JOINT, OXYGEN_METER, new BigDecimal("20.1"), new BigDecimal("20"))),
                against(in(Weld.chamber(List.of(), Optional.of(oxygen("20.1"))))));
    }

    @Test
    void oxygen_that_is_not_known_is_not_within_its_limit() {
        GasReading frozen = new GasReading(OXYGEN_METER, Optional.of(BigDecimal.ONE), BigDecimal.TEN,
                Optional.of("it is frozen"));
        GasReading never = new GasReading(OXYGEN_METER, Optional.empty(), BigDecimal.TEN, Optional.empty());
        assertEquals(List.of(new ArcRefusal.OxygenNotKnown(JOINT, "G-0201", "it is frozen")),
                against(in(Weld.chamber(List.of(), Optional.of(frozen)))));
        assertEquals(List.of(new ArcRefusal.OxygenNotKnown(JOINT, "G-0201", "it was never heard")),
                against(in(Weld.chamber(List.of(), Optional.of(never)))));
        assertEquals(List.of(new ArcRefusal.OxygenNotKnown(JOINT, "", "the chamber has no oxygen meter")),
                against(in(Weld.chamber(List.of(), Optional.empty()))));
    }

    private static ChamberFact wet(List<Refusal> notFit) {
        GasReading wet = new GasReading(new SupplyId("G-0202"), Optional.of(new BigDecimal("80")),
                new BigDecimal("39"), Optional.empty());
        return new ChamberFact(Weld.SESSION, KIT, new StationId("CH-01"), notFit, Optional.of(oxygen("1")),
                Optional.of(wet), Optional.empty(), Duration.ofSeconds(5), false);
    }

    @Test
    void moisture_and_argon_count_too() {
        assertEquals(List.of(new ArcRefusal.MoistureTooHigh(
                                JOINT, new SupplyId("G-0202"), new BigDecimal("80"), new BigDecimal("39")),
                        new ArcRefusal.NoArgonConnected(JOINT, Weld.SESSION)),
                against(in(wet(List.of()))));
    }

    @Test
    void where_the_session_says_why_the_chamber_is_not_fit_the_same_is_not_said_twice() {
        Refusal unfit = new ArcRefusal.NoSessionForJoint(JOINT, KIT);
        assertEquals(List.of(unfit, new ArcRefusal.NoArgonConnected(JOINT, Weld.SESSION)),
                against(in(wet(List.of(unfit)))));
    }

    @Test
    void a_session_of_another_kit_is_none() {
        KitId other = new KitId("K-0048");
        ChamberFact chamber = new ChamberFact(new SessionId("CS-0013"), other, new StationId("CH-01"), List.of(),
                Optional.empty(), Optional.empty(), Optional.empty(), Duration.ofSeconds(5), false);
        assertEquals(List.of(new ArcRefusal.OtherKitInside(JOINT, new SessionId("CS-0013"), other)),
                against(in(chamber)));
    }

    @Test
    void the_back_side_is_confirmed_and_a_meter_there_outweighs_the_word() {
        assertEquals(List.of(new ArcRefusal.BackSideNotConfirmed(JOINT, BackSide.PURGED)),
                against(behind(new BackSideFact(false, Optional.empty()))));
        assertEquals(List.of(new ArcRefusal.BackSideTooHigh(
                        JOINT, OXYGEN_METER, new BigDecimal("150"), new BigDecimal("20"))),
                against(behind(new BackSideFact(true, Optional.of(oxygen("150"))))));
        GasReading silent =
                new GasReading(OXYGEN_METER, Optional.of(BigDecimal.ONE), BigDecimal.TEN, Optional.of("silent"));
        assertEquals(List.of(new ArcRefusal.BackSideNotKnown(JOINT, OXYGEN_METER, "silent")),
                against(behind(new BackSideFact(true, Optional.of(silent)))));
    }

    @Test
    void an_open_back_side_needs_no_word() {
        MapJoint open = new MapJoint("J03", "Boss to plate", JointClass.C, plan().parts(), BackSide.OPEN,
                Optional.of("solid, nothing behind it gets hot"), Optional.empty(), Weld.COOLING, "shop-a",
                Optional.empty());
        assertEquals(List.of(), against(facts(open, fit(), Optional.empty(),
                new BackSideFact(false, Optional.empty()), pieces())));
    }

    @Test
    void filler_is_of_the_planned_class_and_inside_and_a_tack_may_do_without() {
        FillerFact other = new FillerFact("T-1051", Optional.of(FillerClass.ERTI_2), false);
        assertEquals(List.of(new ArcRefusal.WrongFiller(JOINT, "T-1051", "ERTi-2", "ERTi-9"),
                        new ArcRefusal.FillerNotInside(JOINT, "T-1051")),
                against(with(Optional.of(other))));
        assertEquals(List.of(new ArcRefusal.FillerNeeded(JOINT, "ERTi-9")), against(with(Optional.empty())));
        assertEquals(List.of(), against(ArcPurpose.TACK, with(Optional.empty())));
    }

    @Test
    void pieces_are_released_and_inside_and_nothing_stands_against_them() {
        Refusal window = new ArcRefusal.NoArcRunning(JOINT);
        List<PartFact> parts = List.of(
                new PartFact(new JointPart(1, 1), Optional.of(Weld.LEG), false, List.of(window)),
                new PartFact(new JointPart(4, 2), Optional.empty(), false, List.of()));
        assertEquals(List.of(new ArcRefusal.PiecesNotReleased(JOINT, List.of(new JointPart(4, 2))),
                        new ArcRefusal.PiecesNotInside(JOINT, List.of(Weld.LEG)), window),
                against(facts(plan(), fit(), Optional.of(wire()), CONFIRMED, parts)));
    }

    @Test
    void the_welder_is_qualified_now_and_welds_nothing_else() {
        Person unqualified = new Person(Weld.welder().badge(), "Wim Welder", Weld.welder().roles(), Optional.empty(),
                List.of(), false, true, false);
        JointId other = new JointId(KIT, "J09");
        assertEquals(List.of("not-active", "not-qualified", "joint-welder-busy"),
                against(by(unqualified, Optional.of(other))).stream().map(Refusal::code).toList());
        weld.passes(24 * 3600);
        assertEquals(List.of("qualification-expired"), against(good()).stream().map(Refusal::code).toList());
    }

    @Test
    void a_joint_that_no_issue_plans_is_not_welded() {
        ArcFacts unplanned = new ArcFacts(Optional.empty(), Optional.of(fit()), Weld.welder(), Set.of(),
                Optional.empty(), CONFIRMED, pieces(), Optional.empty(), Optional.empty());
        assertEquals(List.of(new ArcRefusal.JointNotPlanned(JOINT)), against(unplanned));
    }

    @Test
    void one_arc_at_a_time() {
        weld.starts(ArcPurpose.TACK);
        assertEquals(List.of(new ArcRefusal.ArcRunning(JOINT, 1, weld.now(), "Wim Welder")), against(good()));
    }

    @Test
    void a_class_a_weld_is_repaired_once_and_a_repair_goes_on_while_it_is_hot() {
        assertEquals(List.of(new ArcRefusal.NothingToRepair(JOINT)),
                JointDecider.objections(JOINT, new Weld().starts(ArcPurpose.TACK).stops().known(),
                        ArcPurpose.REPAIR, good(), weld.now()));
        weld.starts(ArcPurpose.WELD).passes(60).stops().passes(700);
        weld.starts(ArcPurpose.REPAIR).passes(30).stops().passes(20);
        assertEquals(List.of(), against(ArcPurpose.REPAIR, good()));
        weld.starts(ArcPurpose.REPAIR).passes(30).stops();
        assertEquals(1, weld.state().repairs());
        weld.passes(700);
        assertEquals(List.of(new ArcRefusal.RepairsUsedUp(JOINT, JointClass.A, 1)),
                against(ArcPurpose.REPAIR, good()));
        assertEquals(List.of(new ArcRefusal.RepairOnly(JOINT, ArcPurpose.WELD)), against(good()));
    }

    @Test
    void other_classes_are_repaired_as_often_as_is_decided() {
        MapJoint classC = plan(JointClass.C, Weld.COOLING);
        weld.starts(ArcPurpose.WELD, classC).passes(60).stops();
        for (int i = 1; i <= 3; i++) {
            weld.passes(900).starts(ArcPurpose.REPAIR, classC).passes(10).stops();
            assertEquals(i, weld.state().repairs());
        }
    }

    @Test
    void a_joint_keeps_the_plan_of_its_first_arc() {
        weld.starts(ArcPurpose.TACK).stops().passes(900);
        MapJoint changed = plan(JointClass.C, new Cooling(Duration.ZERO, "nothing", "nothing"));
        weld.does(weld.start(ArcPurpose.WELD, new ArcFacts(Optional.of(new WeldMap.Planned(2, changed)),
                Optional.of(fit()), Weld.welder(), Set.of("weld"), Optional.of(wire()), CONFIRMED, pieces(),
                Optional.empty(), Optional.empty())));
        assertEquals(1, weld.state().issue());
        assertEquals(plan(), weld.state().plan());
    }
}
