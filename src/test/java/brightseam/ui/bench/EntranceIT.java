package brightseam.ui.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.browser.ShopTablet;
import brightseam.kernel.BinId;
import brightseam.people.shell.FirstRun;
import brightseam.scan.Label;
import brightseam.scan.OwnLabel;
import brightseam.scan.shell.LabelPrinter;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.options.RequestOptions;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** An empty shop: its first administrator, and camera frames that are read on the server. */
class EntranceIT {

    @Test
    void an_empty_shop_makes_its_first_administrator_and_then_reads_camera_frames() throws IOException {
        try (ShopServer server = ShopServer.empty(); ShopTablet tablet = new ShopTablet(server.url(), "entry")) {
            tablet.open("/sign-in").shows("Make the first administrator").look("first-run");
            fill(tablet, "Code from", "AAAA-AAAA");
            fill(tablet, "Your name", "Nora Vale");
            fill(tablet, "PIN,", "482615");
            fill(tablet, "The same PIN", "482616");
            tablet.press("Open the shop").hears("Two PINs").seen();
            fill(tablet, "The same PIN", "482615");
            tablet.press("Open the shop").hears("Wrong code").seen();
            fill(tablet, "Code from", server.bean(FirstRun.class).code());
            tablet.press("Open the shop").page().waitForURL("**/shop");
            assertThat(tablet.page().locator("header")).containsText("Nora Vale");
            frames(tablet);
        }
    }

    private static void fill(ShopTablet tablet, String label, String text) {
        tablet.page().locator("vaadin-text-field, vaadin-password-field",
                new com.microsoft.playwright.Page.LocatorOptions().setHasText(label)).locator("input").fill(text);
    }

    private static void frames(ShopTablet tablet) throws IOException {
        APIResponse read = post(tablet, "image/jpeg", jpeg(label()));
        assertThat(read.status()).isEqualTo(200);
        assertThat(read.text()).contains("\"text\":", "BSB-0142", "\"symbology\":\"]d1\"");
        assertThat(post(tablet, "image/jpeg", jpeg(new BufferedImage(320, 240, BufferedImage.TYPE_INT_RGB))).status())
                .isEqualTo(204);
        assertThat(post(tablet, "image/jpeg", new byte[600 * 1024]).status()).isEqualTo(413);
        assertThat(post(tablet, "image/jpeg", new byte[] {1, 2, 3}).status()).isEqualTo(415);
        assertThat(post(tablet, "text/plain", new byte[] {1, 2, 3}).status()).isEqualTo(415);
    }

    private static APIResponse post(ShopTablet tablet, String type, byte[] body) {
        String token = (String) tablet.page().evaluate("document.querySelector('meta[name=_csrf]').content");
        return tablet.page().request().post("/scan/frame", RequestOptions.create()
                .setHeader("Content-Type", type).setHeader("X-CSRF-TOKEN", token).setData(body));
    }

    private static BufferedImage label() throws IOException {
        byte[] pdf = new LabelPrinter().pages(List.of(
                new Label(OwnLabel.of(new BinId("B-0142")), "CLEAN BIN", List.of("cleaned parts only"), false)));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, 150, ImageType.RGB);
        }
    }

    private static byte[] jpeg(BufferedImage picture) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(picture, "jpeg", out);
        return out.toByteArray();
    }
}
