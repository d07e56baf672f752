package brightseam.ui.entry;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.browser.ShopTablet;
import brightseam.demo.DemoPerson;
import brightseam.kernel.KitId;
import brightseam.kit.shell.Kits;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a page is worth to the next person, where it was left open beside the sign-in page. */
class LeftOpenIT {

    private static final KitId KIT = new KitId("K-9901");

    private static ShopServer shop;

    @BeforeAll
    static void open_the_demo_shop() {
        shop = ShopServer.demo("--brightseam.demo-past=false");
    }

    @AfterAll
    static void close_it() {
        shop.close();
    }

    @Test
    void a_lead_s_page_does_nothing_more_once_somebody_else_signed_in_beside_it() {
        try (ShopTablet tablet = new ShopTablet(shop.url(), "left-open")) {
            signIn(tablet, DemoPerson.BRAM_ODUYA, "/board");
            Page left = tablet.page().context().newPage();
            left.navigate("/release");
            left.getByLabel("Kit label").fill(KIT.value());
            left.getByLabel("Title").fill("Taken over");
            left.getByLabel("Title").press("Tab");
            signIn(tablet, DemoPerson.ILKA_FERROW, "/bench");
            left.getByText("Open this kit").click();
            left.getByText("Not your screen").waitFor();
            assertThat(shop.bean(Kits.class).find(KIT)).isEmpty();
        }
    }

    private static void signIn(ShopTablet tablet, DemoPerson person, String ownScreen) {
        tablet.page().navigate("/sign-in?badge=" + person.badge());
        tablet.enter(person.pin());
        tablet.page().waitForURL("**" + ownScreen);
    }
}
