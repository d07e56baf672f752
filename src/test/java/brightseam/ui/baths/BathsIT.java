package brightseam.ui.baths;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.demo.DemoPerson;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.line.BathLock;
import brightseam.line.shell.Baths;
import brightseam.traveller.NextAction;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.board.DeskBrowser;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Process control and the lead in a real browser on the demo shop. */
class BathsIT {

    private static final StationId ACID = new StationId("S-PICKLE-1");
    private static final String PIN = DemoPerson.TESSA_QUARLE.pin();

    private static ShopServer shop;
    private static DeskBrowser tessa;
    private static DeskBrowser bram;

    @BeforeAll
    static void open() {
        shop = ShopServer.demo();
        tessa = new DeskBrowser(shop, DemoPerson.TESSA_QUARLE);
        bram = new DeskBrowser(shop, DemoPerson.BRAM_ODUYA);
    }

    @AfterAll
    static void close() {
        tessa.close();
        bram.close();
        shop.close();
    }

    @Test
    void a_weak_acid_locks_the_tank_on_every_screen_and_a_good_analysis_opens_it() {
        tessa.open("/baths").shows("Fit").shows("Tank S-DRYER-2 has no bath registered").look("baths");
        bram.open("/baths/S-PICKLE-1").shows("Dissolved titanium").look("bath");
        titrate("A-901", "21.85", "4.5").press("Sign and enter").hears("Look first")
                .shows("Entering it locks the bath").look("bath-sample");
        tessa.fill("Your PIN", PIN).press("Sign and enter").hears("Entered, bath locked");
        bram.shows("Bath out of limits. S-PICKLE-1, hydrofluoric acid");
        assertThat(codes(startOfWhoWaits())).contains("bath-below-limit");
        strengthen();
        titrate("A-902", "22.95", "10.2").press("Work it out").shows("Everything in limits");
        tessa.fill("Your PIN", PIN).press("Sign and enter").hears("Entered");
        assertThat(shop.bean(Baths.class).find(ACID).orElseThrow().state().locks()).isEmpty();
        assertThat(codes(startOfWhoWaits())).doesNotContain("bath-below-limit");
        String csv = new String(tessa.open("/baths/S-PICKLE-1").page().request().get(tessa.page()
                .locator(".desk-panel:has(h2:text-is('Analyses')) .desk-csv")
                .evaluate("link => link.href").toString()).body(),
                StandardCharsets.UTF_8);
        assertThat(csv).contains("nitric_acid_vol_pct").contains("A-901").contains("total acid = c(NaOH)");
    }

    private static DeskBrowser titrate(String sample, String hydroxide, String lanthanum) {
        return tessa.open("/baths/S-PICKLE-1/sample").shows("Hydrofluoric acid")
                .fill("Sample number", sample).fill("Sample in the flask, mL", "5")
                .fill("Sodium hydroxide, mol/L", "1").fill("Sodium hydroxide used, mL", hydroxide)
                .fill("Fluoride titrant, mol/L", "0.1").fill("Fluoride titrant used, mL", lanthanum)
                .fill("Sample for fluoride, mL", "5").fill("Dissolved titanium, g/L", "7")
                .fill("Temperature, °C", "31");
    }

    private static void strengthen() {
        tessa.open("/baths/S-PICKLE-1/addition").press("Work it out").shows("draw off first").look("bath-addition");
        tessa.fill("Reason for the addition", "Below the minimum").fill("Your PIN", PIN).press("Record and sign")
                .hears("Recorded");
    }

    /** Whoever of the demo's past stands before the pickle is started there. */
    private static Outcome<List<Traveller>> startOfWhoWaits() {
        TravellerId waiting = shop.bean(Travellers.class).notEnded().stream()
                .filter(card -> card.next() instanceof NextAction.Begin begin
                        && begin.step().station().equals("pickle-tank")).map(Card::id).findFirst().orElseThrow();
        return shop.bean(TravellerActions.class).startStep(new Actor(DemoPerson.ILKA_FERROW.badge(), "bench-1"),
                List.of(waiting), new StepId("acid-pickle"), Optional.of(ACID), true, false,
                List.of());
    }

    @Test
    void a_lead_stops_a_tank_finds_it_bad_and_only_process_control_opens_it_after_a_good_sample() {
        StationId water = new StationId("S-DI-1");
        bram.open("/baths/S-DI-1").fill("Reason for the lock", "Film on the water").fill("Your PIN", "000000")
                .press("Lock it and sign").hears("Not recognised");
        bram.fill("Reason for the lock", "Film on the water");
        bram.fill("Your PIN", DemoPerson.BRAM_ODUYA.pin()).press("Lock it and sign").hears("Locked")
                .shows("Locked: by hand").look("bath-locked");
        bram.fill("Reason to unlock", "Skimmed").fill("Your PIN", DemoPerson.BRAM_ODUYA.pin())
                .press("Unlock and sign").hears("Unlocked");
        tessa.open("/baths/S-DI-1").fill("What was found", "Oil in the filter");
        tessa.page().getByLabel("Your PIN").last().fill(PIN);
        tessa.press("Found bad: lock it and sign").hears("Locked").shows("Locked: found bad").look("bath-found-bad");
        assertThat(shop.bean(Baths.class).find(water).orElseThrow().state().lock(BathLock.Cause.FOUND_BAD))
                .isPresent();
        tessa.fill("Reason to unlock", "New filter").fill("Your PIN", PIN).press("Unlock and sign")
                .hears("Good analysis first");
        tessa.open("/baths/S-DI-1/addition").fill("What went in", "400 L of fresh deionised water");
        tessa.page().getByLabel("Your PIN").last().fill(PIN);
        tessa.press("Filled anew: sign").hears("Filled anew");
        tessa.open("/baths/S-DI-1/sample").fill("Sample number", "D-900").fill("Method", "meter")
                .fill("Conductivity, µS/cm", "1.2").fill("Chloride, ppm", "0.2").fill("pH", "6.5")
                .press("Work it out").shows("Everything in limits").look("bath-sample-water");
        tessa.fill("Your PIN", PIN).press("Sign and enter").hears("Entered");
        tessa.open("/baths/S-DI-1").fill("Reason to unlock", "New filter, new water").fill("Your PIN", PIN)
                .press("Unlock and sign").hears("Unlocked");
    }

    @Test
    void a_tank_without_a_bath_is_registered_and_its_limits_are_changed() {
        tessa.open("/baths/S-DRYER-2/limits").fill("Temperature, °C, min", "90").fill("Temperature, °C, max", "50")
                .choose("Liquid", "warm air").fill("Volume, L", "900").fill("Baskets at once", "3")
                .fill("Your PIN", PIN).press("Register and sign").hears("Check the form").look("bath-limits");
        tessa.fill("Temperature, °C, min", "50").fill("Temperature, °C, max", "90")
                .fill("Your PIN", PIN).press("Register and sign").hears("Registered");
        tessa.open("/baths/S-DRYER-2").shows("No analysis yet");
        tessa.open("/baths/S-DRYER-2/limits").fill("Reason for the change", "Drawing")
                .fill("Temperature, °C, max", "85")
                .fill("Your PIN", PIN).press("Change and sign").hears("Changed");
        tessa.open("/baths/S-NONE-9").shows("No such bath");
        assertThat(tessa.page().locator(".desk-ways")).not().containsText("Board");
    }

    private static List<String> codes(Outcome<?> outcome) {
        return outcome instanceof Outcome.Refused<?> refused
                ? refused.refusals().stream().map(Refusal::code).toList() : List.of();
    }
}
