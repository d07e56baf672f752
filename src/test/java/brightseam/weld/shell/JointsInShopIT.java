package brightseam.weld.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.demo.ChamberHands;
import brightseam.demo.Crew;
import brightseam.demo.DemoPerson;
import brightseam.demo.Lots;
import brightseam.demo.Story;
import brightseam.demo.Welding;
import brightseam.kernel.HeatId;
import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.ledger.Outcome;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.session.shell.JointsInside;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.ChamberWork;
import brightseam.traveller.shell.Travellers;
import brightseam.weld.ArcPurpose;
import brightseam.weld.BackSide;
import brightseam.weld.FillerClass;
import brightseam.weld.GasEvidence;
import brightseam.weld.JointClass;
import brightseam.weld.JointPart;
import brightseam.weld.JointStanding;
import brightseam.weld.MapJoint;
import brightseam.weld.MapSheet;
import brightseam.weld.Weld;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Joints in the whole shop: registers, session, simulated meters, travellers and people are the real ones. */
class JointsInShopIT {

    private static final KitId KIT = new KitId("K-902");
    private static final JointId FIRST = new JointId(KIT, "J01");
    private static final JointId SECOND = new JointId(KIT, "J02");

    private final ShopServer shop = ShopServer.demo("--brightseam.demo-past=false");
    private final Joints joints = shop.bean(Joints.class);
    private final Crew crew = shop.bean(Crew.class);

    private static MapJoint joint(String number, BackSide backSide, Optional<FillerClass> filler) {
        return new MapJoint(number, "Long tube to short tube", JointClass.A,
                List.of(new JointPart(1, 1), new JointPart(2, number.equals("J01") ? 1 : 2)), backSide,
                Optional.empty(), filler, Weld.COOLING, "hdf-ws-07", Optional.empty());
    }

    private List<TravellerId> ready() {
        List<Lots.Lot> lots = List.of(
                new Lots.Lot("HDF-902-01", "Long tube", 1, new HeatId("H-4471"), "TUBE"),
                new Lots.Lot("HDF-902-02", "Short tube", 2, new HeatId("H-4471"), "TUBE"));
        shop.bean(Lots.class).open(KIT, "Joints in the shop", Duration.ofHours(60), lots);
        List<TravellerId> released = shop.bean(Lots.class).release(KIT, lots);
        released.forEach(lot -> shop.bean(Story.class).advance(List.of(lot),
                next -> next instanceof NextAction.AwaitSession));
        WeldMaps maps = shop.bean(WeldMaps.class);
        assertThat(maps.draw(crew.actor(DemoPerson.BRAM_ODUYA), KIT, new MapSheet("HDF-902 A", Optional.empty(),
                List.of(joint("J01", BackSide.VENTED, Optional.empty()),
                        joint("J02", BackSide.PURGED, Optional.of(FillerClass.ERTI_9))))))
                .isInstanceOf(Outcome.Done.class);
        assertThat(maps.issue(crew.actor(DemoPerson.BRAM_ODUYA), KIT, crew.signer(DemoPerson.BRAM_ODUYA)))
                .isInstanceOf(Outcome.Done.class);
        return released;
    }

    private List<String> against(DemoPerson welder, JointId joint, boolean backSide) {
        return codes(joints.objections(crew.actor(welder), joint,
                new ArcRequest(ArcPurpose.WELD, Optional.empty(), backSide)));
    }

    private static List<String> codes(List<Refusal> refusals) {
        return refusals.stream().map(Refusal::code).toList();
    }

    private List<String> atStep(TravellerId traveller, StepKind kind) {
        Card card = shop.bean(Travellers.class).find(traveller).orElseThrow();
        Step step = card.procedure().steps().stream().filter(one -> one.kind() == kind)
                .reduce((first, last) -> last).orElseThrow();
        return codes(shop.bean(ChamberWork.class).objections(traveller, step, shop.bean(DemoClock.class).now()));
    }

    private List<String> againstAir(SessionId session, List<TravellerId> travellers) {
        return codes(shop.bean(JointsInside.class).objections(
                session, travellers, shop.bean(DemoClock.class).now()));
    }

    @Test
    void joints_are_welded_proven_kept_in_the_argon_and_judged() {
        try (shop) {
            List<TravellerId> lots = ready();
            assertThat(against(DemoPerson.RHEA_TOLLAND, FIRST, true)).contains("joint-no-session");
            ChamberHands hands = shop.bean(ChamberHands.class);
            SessionId session = hands.open(KIT);
            hands.checkIn(session, lots);
            hands.close(session);
            assertThat(against(DemoPerson.RHEA_TOLLAND, FIRST, true)).isNotEmpty();
            hands.purgeUntilFit(session);
            assertThat(against(DemoPerson.RHEA_TOLLAND, FIRST, true)).isEmpty();
            assertThat(against(DemoPerson.RHEA_TOLLAND, FIRST, false)).containsExactly("joint-back-side-not-confirmed");
            assertThat(against(DemoPerson.CORIN_VASSE, FIRST, true)).containsExactly("qualification-expired");
            assertThat(against(DemoPerson.RHEA_TOLLAND, SECOND, true)).containsExactly("joint-filler-needed");
            assertThat(atStep(lots.getFirst(), StepKind.WELD)).containsExactly("joints-not-welded");

            shop.bean(Welding.class).strike(FIRST);
            assertThat(againstAir(session, lots)).containsExactly("joints-arcs-running");
            shop.bean(DemoClock.class).skip(Duration.ofSeconds(90));
            assertThat(joints.stopArc(crew.actor(DemoPerson.RHEA_TOLLAND), FIRST)).isInstanceOf(Outcome.Done.class);
            assertThat(againstAir(session, lots)).containsExactly("joints-hot");
            shop.bean(Welding.class).cool(session);
            assertThat(againstAir(session, lots)).isEmpty();

            JointView view = joints.view(FIRST).orElseThrow();
            assertThat(view.standing()).isEqualTo(JointStanding.WELDED);
            GasEvidence arc = view.joint().orElseThrow().arcs().getFirst().evidence().orElseThrow();
            assertThat(arc.clean()).as(arc.toString()).isTrue();
            assertThat(view.joint().orElseThrow().arcs().getFirst().cooling()).isPresent();
            assertThat(shop.bean(Travellers.class).find(lots.getFirst()).orElseThrow().traveller().arcs())
                    .hasSize(1).allSatisfy(run -> assertThat(run.provenUntil()).isPresent());
            assertThat(atStep(lots.getFirst(), StepKind.INSPECTION)).containsExactly("joints-not-accepted");
            shop.bean(Welding.class).judgeAll(KIT);
            assertThat(joints.view(FIRST).orElseThrow().standing()).isEqualTo(JointStanding.ACCEPTED);
        }
    }
}
