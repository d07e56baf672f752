package brightseam.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brightseam.browser.ShopServer;
import brightseam.chamber.shell.Chambers;
import brightseam.device.shell.Readings;
import brightseam.kernel.JointId;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.ledger.Outcome;
import brightseam.picture.shell.Pictures;
import brightseam.session.ChamberSession;
import brightseam.session.Phase;
import brightseam.session.shell.SessionActions;
import brightseam.session.shell.Sessions;
import brightseam.traveller.Disposition;
import brightseam.traveller.NextAction;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import brightseam.weld.JointStanding;
import brightseam.weld.MapSheet;
import brightseam.weld.shell.JointView;
import brightseam.weld.shell.Joints;
import brightseam.weld.shell.WeldMaps;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** What the demo shows of its chamber, and a session with all the trouble that can be made there. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class ChamberPastTest {

    private static ShopServer shop;

    @BeforeAll
    static void open_the_demo_shop() {
        shop = ShopServer.demo();
    }

    @AfterAll
    static void close_it() {
        shop.close();
    }

    @Test
    @Order(1)
    void the_past_has_a_session_whose_record_is_closed_with_an_excursion_that_was_decided() {
        ChamberSession session = shop.bean(Sessions.class).ofKit(Yesterday.DONE).getFirst();
        assertThat(session.phase()).isEqualTo(Phase.ENDED);
        List<JointView> joints = shop.bean(Joints.class).ofSession(session.id());
        assertThat(joints).hasSize(2).allMatch(view -> view.standing() == JointStanding.ACCEPTED);
        assertThat(joints).extracting(JointView::isDoubtful).containsExactly(false, true);
        Traveller rails = shop.bean(Travellers.class).ofKit(Yesterday.DONE).getFirst().traveller();
        assertThat(rails.phase()).isEqualTo(brightseam.traveller.Phase.CLOSED);
        assertThat(rails.nonconformances()).isNotEmpty().allSatisfy(nonconformance -> {
            assertThat(nonconformance.text()).contains("K-0040.J02");
            assertThat(nonconformance.decision().orElseThrow().disposition()).isEqualTo(Disposition.USE_AS_IS);
        });
    }

    @Test
    @Order(2)
    void the_anchor_frame_is_ready_and_its_map_has_a_picture() {
        List<Card> cards = shop.bean(Travellers.class).ofKit(Today.ANCHOR);
        assertThat(cards).hasSize(4).allSatisfy(card -> {
            assertThat(card.next()).isInstanceOf(NextAction.AwaitSession.class);
            assertThat(card.isReady(shop.bean(DemoClock.class).now())).isTrue();
        });
        MapSheet sheet = shop.bean(WeldMaps.class).find(Today.ANCHOR).orElseThrow().state().current().orElseThrow()
                .sheet();
        assertThat(sheet.joints()).hasSize(8).allMatch(joint -> joint.spot().isPresent());
        assertThat(shop.bean(Pictures.class).find(sheet.pictureSha256().orElseThrow())).isPresent();
    }

    @Test
    @Order(3)
    void a_clamp_of_aluminium_and_a_roll_of_tape_do_not_go_in() {
        SessionId session = hands().open(Today.ANCHOR);
        assertThat(refused(session, "G-0708")).isNotEmpty();
        assertThat(refused(session, "G-0709")).isNotEmpty();
        assertThat(shop.bean(Chambers.class).objections(DemoChamber.STATION, List.of(new SupplyId("G-0701"))))
                .isEmpty();
    }

    @Test
    @Order(4)
    void a_leak_keeps_the_chamber_from_becoming_fit_until_it_is_closed() {
        SessionId session = open();
        hands().checkIn(session, ids());
        hands().close(session);
        shop.bean(ChamberTrouble.class).leak(0.03);
        Crew.done(shop.bean(SessionActions.class).startPurge(rhea(), session));
        skip(Duration.ofHours(3));
        assertThat(hands().state(session).phase()).isEqualTo(Phase.PURGING);
        assertThat(shop.bean(ChamberTrouble.class).trueOxygenPpm()).isBetween(45.0, 75.0);
        shop.bean(ChamberTrouble.class).mendAll();
        hands().purgeUntilFit(session);
        assertThat(hands().state(session).phase()).isEqualTo(Phase.FIT);
    }

    @Test
    @Order(5)
    void a_thing_goes_through_the_lock() {
        hands().passIn(open(), "G-0706");
        assertThat(hands().state(open()).passes()).hasSize(1);
        assertThat(hands().state(open()).placed("G-0706")).isPresent();
    }

    @Test
    @Order(6)
    void a_gap_in_the_feed_and_a_puff_of_air_open_nonconformances_that_name_them() {
        hands().purgeUntilFit(open());
        shop.bean(Welding.class).weld(joint("J01"));
        assertThat(causes()).isEmpty();
        shop.bean(ChamberTrouble.class).gapInNextArc(Duration.ofSeconds(40), Duration.ofSeconds(25));
        shop.bean(Welding.class).weld(joint("J02"));
        assertThat(causes()).containsOnly(Nonconformance.Cause.JOINT_UNPROVEN);
        decideAll();
        shop.bean(ChamberTrouble.class).puffInNextArc(0.2, Duration.ofSeconds(40));
        shop.bean(Welding.class).weld(joint("J03"));
        assertThat(causes()).contains(Nonconformance.Cause.JOINT_EXCURSION);
        decideAll();
    }

    @Test
    @Order(7)
    void argon_that_runs_out_lets_the_pressure_gauge_fall() {
        shop.bean(ChamberTrouble.class).nearlyEmpty(12);
        skip(Duration.ofMinutes(1));
        assertThat(shop.bean(Readings.class).now(DemoMeter.PRESSURE.label()).last().orElseThrow().value())
                .isLessThan(12);
    }

    @Test
    @Order(8)
    void a_restart_finds_the_chamber_as_its_meters_saw_it_last() {
        double before = shop.bean(ChamberTrouble.class).trueOxygenPpm();
        shop.restart();
        skip(Duration.ofSeconds(30));
        assertThat(shop.bean(ChamberTrouble.class).trueOxygenPpm()).isCloseTo(before, within(5.0)).isLessThan(200);
        assertThat(shop.bean(Readings.class).now(DemoMeter.PRESSURE.label()).last().orElseThrow().value())
                .isLessThan(12);
        assertThat(shop.bean(Readings.class).now(ChamberTrouble.OXYGEN).isUsable()).isTrue();
    }

    private static SessionId open() {
        return shop.bean(Sessions.class).openOfKit(Today.ANCHOR).orElseThrow().id();
    }

    private static List<TravellerId> ids() {
        return shop.bean(Travellers.class).ofKit(Today.ANCHOR).stream().map(Card::id).toList();
    }

    private static JointId joint(String number) {
        return new JointId(Today.ANCHOR, number);
    }

    private static List<Nonconformance.Cause> causes() {
        return shop.bean(Travellers.class).ofKit(Today.ANCHOR).stream()
                .flatMap(card -> card.traveller().openNonconformances().stream())
                .map(Nonconformance::cause).toList();
    }

    private static void decideAll() {
        skip(Duration.ofMinutes(12));
        shop.bean(Watches.class).look();
        shop.bean(ChamberHands.class).letStand(Today.ANCHOR, "Tried out");
    }

    private static List<Refusal> refused(SessionId session, String label) {
        Outcome<ChamberSession> outcome = shop.bean(SessionActions.class).checkIn(rhea(), session, label);
        return outcome instanceof Outcome.Refused<ChamberSession> refused ? refused.refusals() : List.of();
    }

    private static ChamberHands hands() {
        return shop.bean(ChamberHands.class);
    }

    private static Actor rhea() {
        return shop.bean(Crew.class).actor(DemoPerson.RHEA_TOLLAND);
    }

    private static void skip(Duration duration) {
        shop.bean(DemoClock.class).skip(duration);
    }
}
