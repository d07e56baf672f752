package brightseam.session.shell;

import static brightseam.demo.DemoPerson.BRAM_ODUYA;
import static brightseam.demo.DemoPerson.RHEA_TOLLAND;
import static brightseam.session.shell.ChamberInShop.*;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.chamber.shell.Chambers;
import brightseam.demo.Lots;
import brightseam.demo.Story;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StepId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.material.Heat;
import brightseam.material.shell.Heats;
import brightseam.people.Signer;
import brightseam.session.ChamberSession;
import brightseam.session.LockPass;
import brightseam.session.Phase;
import brightseam.session.Placed.Where;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.shell.Travellers;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A whole session through the shop's services, on the real ledger, the real database and the real readings. */
class SessionInUseTest {

    private static final KitId KIT = new KitId("K-9001");
    private static ShopServer shop;
    private static ChamberInShop chamber;
    private static TravellerId tube;
    private static TravellerId wire;
    private static SessionId session;
    private static int labels;

    @BeforeAll
    static void open() {
        shop = ShopServer.demo("--brightseam.demo-past=false",
                "--brightseam.procedures=src/test/resources/session-procedures");
        chamber = new ChamberInShop(shop);
        HeatId heat = shop.bean(Heats.class).all().stream()
                .filter(one -> one.grade().equals("9") && !one.isOnHold()).map(Heat::id).findFirst().orElseThrow();
        List<Lots.Lot> lots = List.of(new Lots.Lot("HDF-9001-01", "Trial leg", 2, heat, "TUBE"),
                new Lots.Lot("HDF-9001-90", "Trial leg, filler rods", 10, heat, "FILLER"));
        shop.bean(Lots.class).open(KIT, "Trial leg", Duration.ofHours(4), lots);
        List<TravellerId> released = shop.bean(Lots.class).release(KIT, lots);
        tube = released.getFirst();
        wire = released.getLast();
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @Test
    void a_kit_goes_through_the_chamber() {
        begin();
        checkIn();
        shut();
        purge();
        lateThroughTheLock();
        opening();
    }

    private void begin() {
        session = done(actions().open(chamber.welder(), KIT, CHAMBER, chamber.signer(RHEA_TOLLAND))).result().id();
        assertThat(codes(actions().open(chamber.welder(), KIT, CHAMBER, chamber.lead())))
                .containsExactly("chamber-busy", "kit-in-another-session");
    }

    private void checkIn() {
        assertThat(codes(actions().checkIn(chamber.welder(), session, "X-9999"))).containsExactly(
                "session-label-of-nothing");
        assertThat(codes(actions().checkIn(chamber.welder(), session, tube.value())))
                .contains("item-step-not-signed", "item-not-clean", "item-not-in-clean-bin");
        assertThat(all(tube, TravellerEvent.AttemptRefused.class)).last()
                .satisfies(tried -> assertThat(tried.attempt()).isEqualTo("check in"));
        shop.bean(Story.class).advance(tube, new StepId("pass-in"));
        shop.bean(Story.class).advance(wire, new StepId("bagging"));
        chamber.supply("TL-9009", "plated-clamp");
        assertThat(codes(actions().checkIn(chamber.welder(), session, "TL-9009")))
                .containsExactly("item-not-on-list", "supply-may-not-touch", "material-not-permitted");
        String bag = shop.bean(Travellers.class).find(tube).orElseThrow().traveller().placement().orElseThrow().bin()
                .value();
        ChamberSession in = done(actions().checkIn(chamber.welder(), session, bag)).result();
        assertThat(in.travellersIn(Where.CHECKED_IN)).containsExactly(tube);
        Stream.of("stainless-lock-tray", "stainless-fixture", "tungsten-electrode", "tungsten-electrode",
                "white-cotton").forEach(type -> done(actions().checkIn(chamber.welder(), session, fresh(type))));
    }

    private void shut() {
        assertThat(view().missing()).extracting(line -> line.need().title())
                .containsExactly("Trial leg, filler rods", "White cotton gloves");
        assertThat(view().againstClosing()).extracting(Refusal::code)
                .containsExactly("need-not-met", "need-not-met", "meter-not-usable");
        done(actions().leaveOut(chamber.welder(), session, wire.value(), "comes through the lock", chamber.lead()));
        done(actions().checkIn(chamber.welder(), session, fresh("white-cotton")));
        chamber.reads(OXYGEN, 209_000, 5);
        assertThat(view().againstClosing()).isEmpty();
        assertThat(codes(closed(List.of()))).containsExactly("contact-not-scanned");
        Outcome.Done<ChamberSession> shut = done(closed(List.of(new SupplyId(fresh("white-cotton")))));
        assertThat(shut.entries()).extracting(entry -> entry.stream().family()).contains("session", "traveller");
        assertThat(all(tube, TravellerEvent.EnteredChamber.class)).singleElement()
                .satisfies(entered -> assertThat(entered.way()).isEqualTo("open chamber"));
        assertThat(shut.result().phase()).isEqualTo(Phase.CLOSED);
        assertThat(shop.bean(Sessions.class).openWith(tube)).map(ChamberSession::id).contains(session);
    }

    private void purge() {
        assertThat(view().againstPurge()).isEmpty();
        done(actions().startPurge(chamber.welder(), session));
        assertThat(view().gas().fitness().reasons()).extracting(Refusal::code).containsExactly(
                "oxygen-above-limit", "meter-not-usable");
        pass(Duration.ofHours(2), 12, 25);
        look();
        assertThat(state().phase()).isEqualTo(Phase.FIT);
        assertThat(shop.bean(SessionGas.class).ofKit(KIT)).hasValueSatisfying(fact -> {
            assertThat(fact.isFit()).isTrue();
            assertThat(fact.connected()).map(argon -> argon.lot()).contains("LOT A");
            assertThat(fact.oxygenMeter()).contains(OXYGEN);
            assertThat(fact.inside()).containsExactly(tube);
        });
        pass(Duration.ofMinutes(1), 25, 5);
        look();
        assertThat(state().phase()).isEqualTo(Phase.UNFIT);
        assertThat(state().gas().unfit()).extracting(reason -> reason.code()).containsExactly("oxygen-above-limit");
        pass(Duration.ofMinutes(1), 11, 30);
        look();
        assertThat(state().phase()).isEqualTo(Phase.FIT);
    }

    private void lateThroughTheLock() {
        shop.bean(Story.class).advance(wire, new StepId("pass-in"));
        assertThat(view().lock().orElseThrow().offered()).contains(LockMove.OPEN_OUTER)
                .doesNotContain(LockMove.OPEN_INNER, LockMove.SHUT_INNER);
        done(lock().openOuter(chamber.welder(), session));
        done(lock().putIn(chamber.welder(), session, wire.value()));
        done(lock().shutOuter(chamber.welder(), session));
        assertThat(codes(lock().openInner(chamber.welder(), session, true, gloves(), welder())))
                .containsExactly("meter-not-usable");
        pass(Duration.ofMinutes(11), 11, 30);
        chamber.reads(LOCK_OXYGEN, 140, 3);
        assertThat(codes(lock().openInner(chamber.welder(), session, true, gloves(), welder())))
                .containsExactly("lock-oxygen-above-limit");
        chamber.reads(LOCK_OXYGEN, 60, 0);
        assertThat(view().lock().orElseThrow().readyInner()).isTrue();
        assertThat(view().lock().orElseThrow().oxygenPpmAfterOpening()).isPresent();
        ChamberSession opened = done(lock().openInner(chamber.welder(), session, true, gloves(), welder())).result();
        assertThat(opened.travellersIn(Where.INSIDE)).containsExactlyInAnyOrder(tube, wire);
        assertThat(all(wire, TravellerEvent.EnteredChamber.class)).singleElement()
                .satisfies(entered -> assertThat(entered.way()).isEqualTo("lock pass 1"));
        assertThat(codes(lock().openOuter(chamber.welder(), session))).containsExactly("inner-door-open");
        done(lock().shutInner(chamber.welder(), session));
        chamber.reads(OXYGEN, 16, 0);
        pass(SessionWatch.WATCHED_AFTER_PASS, 12, 299);
        look();
        assertThat(state().passes()).singleElement().extracting(LockPass::effect).satisfies(effect ->
                assertThat(effect.orElseThrow().oxygenPpmHighest()).isGreaterThanOrEqualTo(
                        new BigDecimal("16.0")));
        assertThat(all(wire, TravellerEvent.LockPassed.class)).hasSize(1);
    }

    private void opening() {
        assertThat(view().againstOpening()).extracting(Refusal::code).containsExactly("room-monitor-not-usable");
        chamber.reads(ROOM, 19.1, 0);
        assertThat(view().againstOpening()).extracting(Refusal::code).containsExactly("room-oxygen-low");
        chamber.reads(ROOM, 20.8, 0);
        assertThat(codes(actions().abandon(chamber.welder(), session, "trial", true, welder())))
                .containsExactly("role-needed");
        ChamberSession over = done(actions().openChamber(chamber.welder(), session, true, welder())).result();
        assertThat(over.phase()).isEqualTo(Phase.ENDED);
        assertThat(over.travellersPassedIn()).as("nothing was welded, nothing is signed").isNotEmpty().allSatisfy(
                id -> assertThat(all(id, TravellerEvent.StepSigned.class)).noneMatch(
                        signed -> signed.step().value().equals("weld")));
        assertThat(codes(actions().signWelds(chamber.welder(), session, welder())))
                .containsExactly("no-weld-to-sign");
        assertThat(shop.bean(Sessions.class).openAt(CHAMBER)).isEmpty();
        assertThat(shop.bean(Sessions.class).over(5)).extracting(ChamberSession::id).contains(session);
        assertThat(shop.bean(Chambers.class).used(CHAMBER, 5)).as("its argon was counted in the same append")
                .singleElement().extracting(use -> use.report().session()).isEqualTo(session);
    }

    /** Lets time pass, then gas of {@code ppm} be read for the last {@code seconds} of it. */
    private void pass(Duration duration, double ppm, long seconds) {
        shop.bean(Story.class).pass(duration);
        chamber.reads(OXYGEN, ppm, seconds);
        chamber.reads(MOISTURE, 20, seconds);
    }

    private static void look() {
        shop.bean(SessionWatch.class).look();
    }

    private Outcome<ChamberSession> closed(List<SupplyId> touching) {
        return actions().closeChamber(chamber.welder(), session, true, touching, welder());
    }

    private List<SupplyId> gloves() {
        return List.of(new SupplyId(fresh("white-cotton")));
    }

    private Signer welder() {
        return chamber.signer(RHEA_TOLLAND);
    }

    private static String fresh(String type) {
        return chamber.supply("TL-" + (9_100 + ++labels), type).value();
    }

    private static ChamberSession state() {
        return shop.bean(Sessions.class).find(session).orElseThrow().state();
    }

    private static SessionView view() {
        return shop.bean(SessionViews.class).of(session).orElseThrow();
    }

    private static SessionActions actions() {
        return shop.bean(SessionActions.class);
    }

    private static LockActions lock() {
        return shop.bean(LockActions.class);
    }

    private static List<String> codes(Outcome<?> outcome) {
        return Optional.of(outcome).filter(one -> one instanceof Outcome.Refused<?>)
                .map(one -> ((Outcome.Refused<?>) one).refusals()).orElse(List.of()).stream().map(Refusal::code)
                .toList();
    }

    private static <E extends TravellerEvent> List<E> all(TravellerId id, Class<E> type) {
        return shop.bean(Travellers.class).record(id).stream().map(recorded -> recorded.event())
                .filter(type::isInstance).map(type::cast).toList();
    }
}
