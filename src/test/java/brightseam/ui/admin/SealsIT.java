package brightseam.ui.admin;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.demo.DemoPerson;
import brightseam.scan.shell.NoticePrinter;
import brightseam.seal.shell.Seals;
import brightseam.seal.shell.Seals.KeyInUse;
import brightseam.ui.board.DeskBrowser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The page of the seals in a browser: what an inspector reads, and how an administrator changes the key. */
class SealsIT {

    @Test
    void an_inspector_reads_what_is_sealed_and_an_administrator_changes_the_key() throws Exception {
        Path share = Files.createTempDirectory("share");
        try (ShopServer shop = ShopServer.demo("--brightseam.witness=" + share)) {
            Seals seals = shop.bean(Seals.class);
            seals.covering(seals.latest().map(Seals.Sealed::size).orElse(1L));
            try (DeskBrowser inspector = new DeskBrowser(shop, DemoPerson.SANNA_VEIT)) {
                inspector.open("/shop/seals").shows("That is every entry").look("seals");
                assertThat(inspector.page().getByText("Change the key").count()).as("for administrators").isZero();
            }
            try (DeskBrowser office = new DeskBrowser(shop, DemoPerson.ODA_MARSH)) {
                office.open("/shop/seals").press("Send the newest head now");
                office.shows("has the head over");
                office.press("Change the key that signs the ledger");
                office.fill("Reason", "the yearly change");
                office.press("Change the key that signs the ledger, with this reason").hears("Key changed");
                seals.covering(seals.latest().orElseThrow().size() + 1);
                office.open("/shop/seals").shows("signs beside the newest until").look("seals-two-keys");
            }
            assertThat(seals.keys()).extracting(KeyInUse::active).containsExactly(true, true);
            sheet(seals.keys().getLast());
        }
    }

    private static void sheet(KeyInUse use) throws Exception {
        byte[] pdf = new NoticePrinter().sheet("Our public key", use.key().text(),
                new SealWords(java.time.ZoneOffset.UTC).sheet("Halcyon Deep Frames", use));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            List<String> lines = new PDFTextStripper().getText(document).lines().map(String::strip).toList();
            assertThat(lines).containsAll(SealWords.parts(use.key()));
            javax.imageio.ImageIO.write(new PDFRenderer(document).renderImageWithDPI(0, 80), "png",
                    Path.of("target/screenshots/seals-sheet.png").toFile());
        }
    }
}
