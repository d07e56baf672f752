package brightseam.weld;

import static brightseam.kernel.Samples.ORIGIN;
import static brightseam.weld.Weld.KIT;
import static brightseam.weld.Weld.plan;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.Decision;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WeldMapDeciderTest {

    private static final MapSheet SHEET =
            new MapSheet("HDF-3200 C, lander leg", Optional.of("0".repeat(64)), List.of(plan()));
    private static final WeldMapCommand DRAW = new WeldMapCommand.DrawMap(KIT, SHEET, ORIGIN);
    private static final MapFacts FACTS = facts(Set.of());

    private static MapFacts facts(Set<String> welded) {
        return new MapFacts(Map.of(1, 2, 4, 2), Set.of("shop-a"), welded, true);
    }

    private static WeldMapCommand issue(MapFacts facts) {
        return new WeldMapCommand.IssueMap(KIT, facts, Weld.LEAD, ORIGIN);
    }

    private static Optional<WeldMap> after(WeldMapCommand... commands) {
        Optional<WeldMap> map = Optional.empty();
        for (WeldMapCommand command : commands) {
            Decision.Accepted<WeldMapEvent> accepted =
                    (Decision.Accepted<WeldMapEvent>) WeldMapDecider.decide(map, command);
            for (WeldMapEvent event : accepted.events()) {
                map = Optional.of(WeldMap.evolve(map, event));
            }
        }
        return map;
    }

    private static void refuses(Optional<WeldMap> given, WeldMapCommand when, WeldMapRefusal... then) {
        assertEquals(Decision.<WeldMapEvent>refused(List.of(then)), WeldMapDecider.decide(given, when));
    }

    @Test
    void a_map_is_drawn_and_plans_nothing_before_it_is_issued() {
        WeldMap drawn = after(DRAW).orElseThrow();
        assertEquals(Optional.empty(), drawn.planned("J03"));
        assertTrue(drawn.isChanged());
        WeldMap issued = after(DRAW, issue(FACTS)).orElseThrow();
        assertEquals(Optional.of(new WeldMap.Planned(1, plan())), issued.planned("J03"));
        assertFalse(issued.isChanged());
    }

    @Test
    void a_changed_map_is_a_new_issue_and_the_old_one_stays_readable() {
        MapSheet other = SHEET.with(List.of(plan(JointClass.B, Weld.COOLING)));
        WeldMap map = after(DRAW, issue(FACTS), new WeldMapCommand.DrawMap(KIT, other, ORIGIN)).orElseThrow();
        assertEquals(JointClass.A, map.planned("J03").orElseThrow().joint().jointClass());
        WeldMap second = after(DRAW, issue(FACTS), new WeldMapCommand.DrawMap(KIT, other, ORIGIN), issue(FACTS))
                .orElseThrow();
        assertEquals(new WeldMap.Planned(2, plan(JointClass.B, Weld.COOLING)), second.planned("J03").orElseThrow());
        assertEquals(SHEET, second.issues().getFirst().sheet());
    }

    @Test
    void a_joint_is_moved_on_the_picture_of_the_draft() {
        WeldMapCommand move = new WeldMapCommand.MoveJoint(KIT, "J03", new Spot(10, 20), ORIGIN);
        assertEquals(Optional.of(new Spot(10, 20)),
                after(DRAW, move).orElseThrow().draft().joint("J03").orElseThrow().spot());
        refuses(after(DRAW), new WeldMapCommand.MoveJoint(KIT, "J99", new Spot(1, 1), ORIGIN),
                new WeldMapRefusal.MapJointUnknown(KIT, "J99"));
        refuses(Optional.empty(), move, new WeldMapRefusal.MapUnknown(KIT));
    }

    @Test
    void drawing_the_same_again_changes_nothing() {
        assertEquals(Decision.<WeldMapEvent>accepted(List.of()), WeldMapDecider.decide(after(DRAW), DRAW));
        refuses(after(DRAW, issue(FACTS)), issue(FACTS), new WeldMapRefusal.MapUnchanged(KIT, 1));
    }

    @Test
    void an_issue_names_pieces_that_the_kit_has_and_tables_that_the_shop_has() {
        MapFacts poor = new MapFacts(Map.of(1, 2, 4, 1), Set.of(), Set.of("J01", "J03"), false);
        refuses(after(DRAW), issue(poor),
                new WeldMapRefusal.MapPartsUnknown(KIT, "J03", List.of(new JointPart(4, 2))),
                new WeldMapRefusal.MapAcceptanceUnknown(KIT, "J03", "shop-a"),
                new WeldMapRefusal.MapPictureMissing(KIT),
                new WeldMapRefusal.MapDropsWelded(KIT, List.of("J01")));
    }

    @Test
    void a_lead_issues_a_map_with_joints() {
        WeldMapCommand bare = new WeldMapCommand.DrawMap(
                KIT, new MapSheet("HDF-3200", Optional.empty(), List.of()), ORIGIN);
        refuses(after(bare), new WeldMapCommand.IssueMap(KIT, FACTS, Weld.INSPECTOR, ORIGIN),
                new WeldMapRefusal.MapIssuerNoLead(KIT, Weld.INSPECTOR.badge()),
                new WeldMapRefusal.MapHasNoJoints(KIT));
    }

    @Test
    void a_planned_joint_holds_two_pieces_or_more_and_says_why_a_back_side_is_open() {
        assertThrows(IllegalArgumentException.class, () -> joint(List.of(new JointPart(1, 1)), BackSide.VENTED, null));
        assertThrows(IllegalArgumentException.class,
                () -> joint(List.of(new JointPart(1, 1), new JointPart(1, 1)), BackSide.VENTED, null));
        List<JointPart> two = List.of(new JointPart(1, 1), new JointPart(1, 2));
        assertThrows(IllegalArgumentException.class, () -> joint(two, BackSide.OPEN, null));
        assertThrows(IllegalArgumentException.class, () -> joint(two, BackSide.PURGED, "why not"));
        assertThrows(IllegalArgumentException.class, () -> new MapSheet(
                "HDF", Optional.empty(), List.of(plan(), plan())));
    }

    private static MapJoint joint(List<JointPart> parts, BackSide back, String reason) {
        return new MapJoint("J01", "Joint", JointClass.B, parts, back, Optional.ofNullable(reason), Optional.empty(),
                Weld.COOLING, "shop-a", Optional.empty());
    }
}
