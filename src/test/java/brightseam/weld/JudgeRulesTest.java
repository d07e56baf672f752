package brightseam.weld;

import static brightseam.weld.Weld.INSPECTOR;
import static brightseam.weld.Weld.JOINT;
import static brightseam.weld.Weld.SCALE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import brightseam.kernel.Decision;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JudgeRulesTest {

    private static final FindingNote CRACK = new FindingNote("crack", "4 mm, in the tube");
    private static final FindingNote LACK = new FindingNote("lack-of-fusion", "root, 10 mm");
    private static final FindingNote UNDERCUT = new FindingNote("undercut", "0.1 mm over 5 mm");
    private final Weld weld = new Weld().welded();

    private static ColoursSeen seen(String... colours) {
        return new ColoursSeen(true, List.of(colours), Optional.empty());
    }

    private JointCommand.Judge accept(ColoursSeen colours, Optional<String> remark, FindingNote... findings) {
        return weld.judge(Verdict.ACCEPT, colours, List.of(findings), remark, Optional.empty());
    }

    @Test
    void a_silver_weld_is_accepted_with_what_it_was_held_against() {
        weld.does(weld.judge(Verdict.ACCEPT, "silver"));
        Judgement judged = weld.state().judgement().orElseThrow();
        assertEquals(Ruling.ACCEPT, judged.ruling());
        assertEquals("shop-a", judged.table());
        assertEquals(JointStanding.ACCEPTED, weld.state().standing(weld.now()));
        assertEquals(List.of("joint-accepted"), weld.refused(weld.start(ArcPurpose.REPAIR, Weld.good())));
    }

    @Test
    void the_worst_colour_decides_and_the_refusal_says_what_comes_next() {
        assertEquals(Decision.refused(List.of(new JudgeRefusal.ColourRejects(
                        JOINT, List.of("White"), "Shop's table A", "remove all of the weld"))),
                JointDecider.decide(weld.known(), accept(seen("silver", "white"), Optional.of("looks fine"))));
        weld.does(weld.judge(Verdict.REJECT, "white"));
        assertEquals(List.of("remove all of the weld"), weld.state().judgement().orElseThrow().next());
    }

    @Test
    void a_condition_has_to_be_answered() {
        assertEquals(Decision.refused(List.of(new JudgeRefusal.ConditionUnanswered(
                        JOINT, "the lead has to accept bronze by name; measure its depth"))),
                JointDecider.decide(weld.known(), accept(seen("bronze"), Optional.empty(), UNDERCUT)));
        weld.does(accept(seen("bronze"), Optional.of("accepted by name in the order, 0.1 of 0.3 mm"), UNDERCUT));
        assertEquals(Ruling.CONDITIONAL, weld.state().judgement().orElseThrow().ruling());
    }

    @Test
    void a_narrow_band_at_the_edge_is_judged_by_its_own_row() {
        ColoursSeen band = new ColoursSeen(true, List.of("silver"), Optional.of("bronze"));
        assertEquals(List.of(), weld.refused(accept(band, Optional.empty())));
        ColoursSeen powder = new ColoursSeen(true, List.of("silver"), Optional.of("white"));
        assertEquals(List.of("joint-colour-rejects"), weld.refused(accept(powder, Optional.empty())));
    }

    @Test
    void a_brushed_weld_is_not_accepted_by_its_colour() {
        ColoursSeen brushed = new ColoursSeen(false, List.of("silver"), Optional.empty());
        assertEquals(List.of("joint-brushed-before-judged"), weld.refused(accept(brushed, Optional.of("shiny"))));
    }

    @Test
    void findings_reject_and_a_disposition_lets_some_stay_never_a_crack_in_the_base_metal() {
        assertEquals(List.of("joint-finding-rejects", "joint-finding-never-accepted"),
                weld.refused(accept(seen("silver"), Optional.empty(), LACK, CRACK)));
        weld.does(weld.judge(Verdict.REJECT, "silver", LACK)).passes(60);
        assertEquals(List.of("joint-judged-already", "joint-finding-rejects"),
                weld.refused(accept(seen("silver"), Optional.empty(), LACK)));
        Optional<String> decided = Optional.of("Use as is, N-1");
        assertEquals(List.of("joint-finding-never-accepted"), weld.refused(weld.judge(Verdict.ACCEPT,
                seen("silver"), List.of(LACK, CRACK), Optional.empty(), decided)));
        weld.does(weld.judge(Verdict.ACCEPT, seen("silver"), List.of(LACK), Optional.empty(), decided));
        assertEquals(JointStanding.ACCEPTED, weld.state().standing(weld.now()));
        assertEquals(Ruling.REJECT, weld.state().judgement().orElseThrow().ruling());
    }

    @Test
    void a_rejection_has_a_reason() {
        assertEquals(List.of("joint-reject-without-reason"), weld.refused(weld.judge(Verdict.REJECT, "silver")));
        assertEquals(List.of(), weld.refused(weld.judge(
                Verdict.REJECT, seen("silver"), List.of(), Optional.of("wrong place"), Optional.empty())));
    }

    @Test
    void a_rejected_joint_is_repaired_once_that_is_decided_and_judged_again() {
        weld.does(weld.judge(Verdict.REJECT, "white")).passes(60);
        assertEquals(JointStanding.REJECTED, weld.state().standing(weld.now()));
        assertEquals(List.of("joint-repair-not-decided"), weld.refused(weld.start(ArcPurpose.REPAIR, Weld.good())));
        assertEquals(List.of("joint-repair-only"), weld.refused(weld.start(ArcPurpose.WELD, Weld.good())));
        ArcFacts good = Weld.good();
        weld.does(weld.start(ArcPurpose.REPAIR, new ArcFacts(good.planned(), good.chamber(), good.welder(),
                good.qualificationNeeded(), good.filler(), good.backSide(), good.parts(), Optional.empty(),
                Optional.of("Repair, N-1"))));
        weld.passes(30).stops().passes(700).proves();
        assertEquals(JointStanding.WELDED, weld.state().standing(weld.now()));
        weld.does(weld.judge(Verdict.ACCEPT, "silver"));
        assertEquals(2, weld.state().judgements().size());
    }

    @Test
    void nothing_is_judged_before_it_is_welded_cool_and_proven() {
        assertEquals(List.of("joint-not-welded"), new Weld().refused(weld.judge(Verdict.ACCEPT, "silver")));
        Weld hot = new Weld().starts(ArcPurpose.TACK);
        assertEquals(List.of("joint-arc-running"), hot.refused(hot.judge(Verdict.ACCEPT, "silver")));
        hot.stops().passes(1);
        assertEquals(List.of("joint-not-welded", "joint-still-hot", "joint-evidence-awaited"),
                hot.refused(hot.judge(Verdict.ACCEPT, "silver")));
    }

    @Test
    void an_inspector_with_a_stamp_judges_what_others_welded() {
        Signer welder = new Signer(Weld.welder().badge(), "Wim Welder", List.of(Role.INSPECTOR), Optional.empty(),
                "badge+pin");
        assertEquals(List.of("joint-judge-stamp-missing", "joint-judge-welded"), weld.refused(by(welder)));
        assertEquals(List.of("joint-judge-no-inspector"), weld.refused(by(Weld.LEAD)));
    }

    private JointCommand by(Signer signer) {
        return new JointCommand.Judge(JOINT, Verdict.ACCEPT, seen("silver"), List.of(), light("1200"), List.of(),
                Optional.empty(), new JudgeFacts(SCALE, List.of(), List.of(), Optional.empty()), signer,
                weld.origin());
    }

    private static Lighting light(String lux) {
        return new Lighting(new BigDecimal(lux), Weld.LIGHT_METER);
    }

    @Test
    void light_photographs_colours_and_findings_are_what_the_shop_knows() {
        JudgeFacts facts = new JudgeFacts(SCALE, List.of(new ArcRefusal.NoArcRunning(JOINT)),
                List.of("0".repeat(64)), Optional.empty());
        assertEquals(List.of("joint-colour-not-known", "joint-finding-not-known", "joint-no-arc-running",
                        "joint-too-dark", "joint-photographs-not-stored"),
                weld.refused(new JointCommand.Judge(JOINT, Verdict.ACCEPT, seen("pink"),
                        List.of(new FindingNote("scratch", "long")), light("999"), List.of("0".repeat(64)),
                        Optional.empty(), facts, INSPECTOR, weld.origin())));
        assertEquals(List.of("joint-colour-missing"), weld.refused(accept(seen(), Optional.empty())));
    }
}
