package brightseam.browser;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.demo.ChamberHands;
import brightseam.demo.ChamberTrouble;
import brightseam.demo.Crew;
import brightseam.demo.DemoPerson;
import brightseam.demo.Lots;
import brightseam.demo.Story;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.SessionId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.ledger.Outcome;
import brightseam.scan.LabelKind;
import brightseam.session.Phase;
import brightseam.traveller.NextAction;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.shell.Travellers;
import brightseam.weld.BackSide;
import brightseam.weld.Cooling;
import brightseam.weld.JointClass;
import brightseam.weld.JointPart;
import brightseam.weld.MapJoint;
import brightseam.weld.MapSheet;
import brightseam.weld.shell.WeldMaps;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A session in which everything goes wrong: a leak, a gap in the readings, air in an arc, argon that runs low. */
class ChamberTroubleIT {

    private static final KitId KIT = new KitId("K-TROUBLE");
    private static final DemoPerson RHEA = DemoPerson.RHEA_TOLLAND;
    private static final double LEAK_LITRES_PER_MINUTE = 0.05;
    private static final Duration ARC = Duration.ofSeconds(90);

    private static ShopServer shop;

    @BeforeAll
    static void open() {
        shop = ShopServer.demo("--brightseam.demo-past=false", "--brightseam.scanner-burst-millis=900",
                "--brightseam.scanner-idle-millis=1000");
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @Test
    void a_leak_a_gap_an_excursion_and_a_change_of_argon_are_told_and_recorded() {
        List<TravellerId> lots = lots();
        map();
        ChamberHands hands = shop.bean(ChamberHands.class);
        SessionId session = hands.open(KIT);
        hands.checkIn(session, lots);
        hands.close(session);
        try (ShopTablet rhea = new ShopTablet(shop.url(), "trouble").signIn(RHEA.badge().value(), RHEA.pin())) {
            leak(rhea, session);
            mended(rhea, session);
            gap(rhea, lots);
            changeOver(rhea, session);
            excursion(rhea, lots);
            end(rhea, session, lots);
        }
    }

    private static void leak(ShopTablet rhea, SessionId session) {
        trouble().leak(LEAK_LITRES_PER_MINUTE);
        rhea.open("/chamber/" + session).shows("Chamber closed").press("Start the purge").press("I have checked each")
                .hears("Purging");
        for (int minutes = 0; minutes < 240 && !rhea.page().locator("main").innerText().contains("Levels off");
                minutes += 10) {
            pass(Duration.ofMinutes(10));
            rhea.page().locator(".gauge.first .gauge-value").waitFor();
        }
        sees(rhea, "Levels off at about");
        sees(rhea, "as much as a leak of");
        rhea.look("levels-off");
        Tour.across(rhea, "leak");
        assertThat(hands(session)).isEqualTo(Phase.PURGING);
    }

    private static void mended(ShopTablet rhea, SessionId session) {
        trouble().leak(0);
        for (int minutes = 0; minutes < 240 && hands(session) != Phase.FIT; minutes += 5) {
            pass(Duration.ofMinutes(5));
            rhea.page().locator(".gauge.first .gauge-value").waitFor();
        }
        rhea.shows("Fit to weld").look("mended");
    }

    private static void gap(ShopTablet rhea, List<TravellerId> lots) {
        trouble().gapInNextArc(Duration.ofSeconds(20), Duration.ofSeconds(25));
        weld(rhea, "J01");
        Nonconformance unproven = opened(lots.getFirst());
        assertThat(unproven.cause()).isEqualTo(Nonconformance.Cause.JOINT_UNPROVEN);
        assertThat(unproven.text()).contains("J01");
        assertThat(opened(lots.get(1)).cause()).isEqualTo(Nonconformance.Cause.JOINT_UNPROVEN);
        assertThat(open(lots.get(2))).isEmpty();
        rhea.look("gap");
        Tour.across(rhea, "joint");
        rhea.press("Joints").shows("Fit to weld");
    }

    private static void changeOver(ShopTablet rhea, SessionId session) {
        rhea.open("/argon");
        sees(rhea, "Connected lasts, holding");
        rhea.scan(LabelKind.SUPPLY, "G-0601");
        told(rhea, "G-0601");
        rhea.scan(LabelKind.SUPPLY, "G-0604");
        told(rhea, "G-0604");
        rhea.fill("Level of what goes on, %", "70").fill("Your PIN", RHEA.pin()).push("Change over and sign");
        told(rhea, "Changed over");
        rhea.open("/chamber/" + session).shows("Fit to weld");
    }

    private static void excursion(ShopTablet rhea, List<TravellerId> lots) {
        trouble().puffInNextArc(1, Duration.ofSeconds(15));
        weld(rhea, "J02");
        Nonconformance seen = opened(lots.get(2));
        assertThat(seen.cause()).isEqualTo(Nonconformance.Cause.JOINT_EXCURSION);
        assertThat(seen.text()).contains("J02").containsPattern("[0-9]+(\\.[0-9]+)? ?s");
        rhea.look("excursion");
    }

    /** Nobody waits in the argon for an inspector: the chamber is opened, and signed is what was decided, later. */
    private static void end(ShopTablet rhea, SessionId session, List<TravellerId> lots) {
        ChamberHands hands = shop.bean(ChamberHands.class);
        hands.openChamber(session);
        assertThat(lots).noneMatch(ChamberTroubleIT::isWeldSigned);
        assertThat(hands.state(session).argonUsed()).extracting(use -> use.supply().value())
                .containsExactly("G-0601", "G-0604");
        assertThat(hands.state(session).argonUsed()).allMatch(use -> use.supply().value().equals("G-0604")
                || use.standardLitres().signum() > 0);
        rhea.open("/chamber/" + session).shows("Session over");
        PlaywrightAssertions.assertThat(rhea.page().getByText("Sign the welds")).hasCount(0);
        hands.letStand(KIT, "Sectioned beside it: bright, no case");
        rhea.open("/chamber/" + session).shows("Session over").look("welds-to-sign").press("Sign the welds")
                .enter(RHEA.pin()).hears("Signed");
        assertThat(lots).allMatch(ChamberTroubleIT::isWeldSigned);
    }

    private static boolean isWeldSigned(TravellerId lot) {
        return shop.bean(Travellers.class).find(lot).orElseThrow().traveller().isSigned(new StepId("weld"));
    }

    private static void weld(ShopTablet rhea, String joint) {
        rhea.press(joint).shows("Joint " + joint).look("before-" + joint).press("Back side is vented")
                .look("vented-" + joint).press("Arm with PIN").press("I have checked each").enter(RHEA.pin());
        PlaywrightAssertions.assertThat(rhea.page().locator("button.arc")).isEnabled();
        rhea.page().locator("button.arc").click();
        PlaywrightAssertions.assertThat(rhea.page().locator(".arc-words")).hasText("Arc off");
        for (int seconds = 0; seconds < ARC.toSeconds(); seconds += 15) {
            pass(Duration.ofSeconds(15));
        }
        rhea.page().locator("button.arc").click();
        rhea.page().locator(".work-card[data-doing=ArcOver]").waitFor();
        pass(Duration.ofMinutes(10));
        sees(rhea, "While it burnt, oxygen: highest");
    }

    private static Nonconformance opened(TravellerId lot) {
        return open(lot).stream().filter(one -> one.cause().isAboutAJoint()).findFirst().orElseThrow();
    }

    private static List<Nonconformance> open(TravellerId lot) {
        return shop.bean(Travellers.class).find(lot).orElseThrow().traveller().openNonconformances();
    }

    private static Phase hands(SessionId session) {
        return shop.bean(ChamberHands.class).state(session).phase();
    }

    private static ChamberTrouble trouble() {
        return shop.bean(ChamberTrouble.class);
    }

    private static void told(ShopTablet tablet, String words) {
        tablet.page().locator("shop-verdict", new Page.LocatorOptions().setHasText(words)).first().waitFor();
    }

    private static void sees(ShopTablet tablet, String words) {
        tablet.page().getByText(words).first().waitFor();
    }

    private static void pass(Duration time) {
        shop.bean(DemoClock.class).skip(time);
    }

    private static List<TravellerId> lots() {
        List<Lots.Lot> lots = IntStream.rangeClosed(1, 4).mapToObj(number -> new Lots.Lot("HDF-78-0" + number,
                "Test frame, tube " + number, 1, new HeatId("H-4471"), "TUBE")).toList();
        shop.bean(Lots.class).open(KIT, "Test frame", Duration.ofHours(60), lots);
        List<TravellerId> released = shop.bean(Lots.class).release(KIT, lots);
        released.forEach(lot -> shop.bean(Story.class).advance(List.of(lot),
                next -> next instanceof NextAction.AwaitSession));
        return released;
    }

    private static void map() {
        Crew crew = shop.bean(Crew.class);
        WeldMaps maps = shop.bean(WeldMaps.class);
        assertThat(maps.draw(crew.actor(DemoPerson.BRAM_ODUYA), KIT, new MapSheet("HDF-78 A", Optional.empty(),
                List.of(joint("J01", 1, 2), joint("J02", 3, 4))))).isInstanceOf(Outcome.Done.class);
        assertThat(maps.issue(crew.actor(DemoPerson.BRAM_ODUYA), KIT, crew.signer(DemoPerson.BRAM_ODUYA)))
                .isInstanceOf(Outcome.Done.class);
    }

    private static MapJoint joint(String number, int one, int other) {
        return new MapJoint(number, "Tube " + one + " to tube " + other, JointClass.B,
                List.of(new JointPart(one, 1), new JointPart(other, 1)), BackSide.VENTED, Optional.empty(),
                Optional.empty(), new Cooling(Duration.ofMinutes(4), "below 260 °C", "test"), "iso-9606-5",
                Optional.empty());
    }
}
