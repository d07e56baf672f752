package brightseam.evidence.shell;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import brightseam.app.Brightseam;
import brightseam.browser.Chromium;
import brightseam.browser.ShopServer;
import brightseam.evidence.EvidenceVerifier;
import brightseam.evidence.Verdict;
import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Entry;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.Ledger;
import brightseam.scan.AimingFrame;
import brightseam.scan.FrameReading;
import brightseam.scan.shell.FrameReader;
import brightseam.seal.NoteVerifier;
import brightseam.seal.shell.Seals;
import brightseam.traveller.shell.Travellers;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Evidence of the demo shop's records, checked in a process of its own that has nothing but the file and the key. */
class EvidenceIT {

    private static final Path MADE = Path.of("target/evidence");
    private static final Path SHOTS = Path.of("target/screenshots");
    private static final double PATIENCE_MILLIS = 30_000;
    private static final int FLIPS = 120;

    private static ShopServer server;
    private static TravellerId welded;
    private static TravellerId unfinished;
    private static Path json;
    private static Path pdf;
    private static String key;

    @TempDir
    private Path nowhere;

    private record Ran(int status, String said, long millis) {}

    @BeforeAll
    static void export() throws IOException {
        server = ShopServer.demo();
        welded = first("joint-judged.2", "joint-welded.1");
        unfinished = server.bean(Travellers.class).notEnded().getFirst().id();
        EvidenceFiles files = server.bean(EvidenceFiles.class);
        Files.createDirectories(MADE);
        json = Files.write(MADE.resolve("welded.json"), files.json(welded)).toAbsolutePath();
        pdf = Files.write(MADE.resolve("welded.pdf"), files.pdf(welded, "Ida Quell")).toAbsolutePath();
        key = server.bean(Seals.class).keys().getLast().key().text();
        System.out.println("evidence of " + welded + ": JSON " + Files.size(json) / 1024 + " KiB, PDF "
                + Files.size(pdf) / 1024 + " KiB");
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    /** The first traveller with an entry of the first of {@code types} that any has. */
    private static TravellerId first(String... types) {
        List<Entry> all = server.bean(Ledger.class).readAllAfter(0, 1_000_000);
        for (String type : types) {
            Optional<Entry> found = all.stream().filter(entry -> entry.type().equals(type)
                    && entry.stream().family().equals("traveller")).findFirst();
            if (found.isPresent()) {
                return new TravellerId(found.get().stream().identity());
            }
        }
        throw new NoSuchElementException(String.join(", ", types));
    }

    private Ran run(String... command) throws IOException, InterruptedException {
        Path said = nowhere.resolve("said");
        long before = System.nanoTime();
        Process process = new ProcessBuilder(command).directory(nowhere.toFile()).redirectErrorStream(true)
                .redirectOutput(said.toFile()).start();
        assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
        return new Ran(process.exitValue(), Files.readString(said), (System.nanoTime() - before) / 1_000_000);
    }

    /** As a stranger runs it: another process, in an empty folder. */
    private Ran verify(Object... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), Brightseam.class.getName(), "verify"));
        for (Object argument : arguments) {
            command.add(argument.toString());
        }
        return run(command.toArray(String[]::new));
    }

    @Test
    void a_stranger_proves_the_print_and_the_file_with_the_public_key_alone() throws Exception {
        Ran file = verify(json, "--key", key);
        Ran print = verify(pdf, "--key", key);
        System.out.println("verified in a new process: JSON " + file.millis() + " ms, PDF " + print.millis() + " ms");
        Files.writeString(MADE.resolve("welded.txt"), print.said());
        assertThat(file.said()).startsWith("PROVEN by the key that was given");
        assertThat(print.said()).startsWith("PROVEN by the key that was given").contains("DEMO")
                .contains("joint " + joint());
        assertThat(List.of(file.status(), print.status())).containsOnly(0);
        assertThat(nowhere.toFile().list()).as("what it wrote beside its words").containsOnly("said");
    }

    private static String joint() {
        return server.bean(Ledger.class).readAllAfter(0, 1_000_000).stream()
                .filter(entry -> entry.stream().value().equals("traveller/" + welded))
                .filter(entry -> entry.type().equals("joint-welded.1")).findFirst()
                .map(entry -> entry.json().replaceAll(".*\"joint\":\"([^\"]+)\".*", "$1")).orElseThrow();
    }

    @Test
    void without_a_key_and_with_another_key_nothing_is_proven() throws Exception {
        assertThat(verify(json).status()).isEqualTo(3);
        String other = new NoteVerifier("another-shop", new byte[32]).text();
        assertThat(verify(pdf, "--key", other).status()).isEqualTo(1);
    }

    @Test
    void what_a_scanner_reads_off_the_paper_matches_its_file_and_no_other() throws Exception {
        String mark = scanned(pdf);
        assertThat(mark).startsWith("BSREC2 " + welded + " ");
        assertThat(verify(pdf, "--key", key, "--mark", mark).said()).contains("The paper belongs to this file")
                .contains("names the same head");
        assertThat(verify(json, "--key", key, "--mark", mark).said()).contains("The paper belongs to this file");
        Path other = Files.write(nowhere.resolve("other.json"), server.bean(EvidenceFiles.class).json(unfinished));
        assertThat(verify(other, "--key", key, "--mark", mark).said())
                .contains("Paper and file do not belong together");
    }

    private static String scanned(Path print) throws IOException {
        try (PDDocument document = Loader.loadPDF(print.toFile())) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 200, ImageType.RGB);
            BufferedImage corner = page.getSubimage(page.getWidth() * 3 / 5, 0, page.getWidth() * 2 / 5,
                    page.getHeight() / 4);
            return new FrameReader().read(corner, AimingFrame.whole()) instanceof FrameReading.Seen seen
                    ? seen.scan().data() : "nothing was seen";
        }
    }

    @Test
    void an_unfinished_record_goes_out_and_says_that_it_is_not_finished() throws Exception {
        Path file = Files.write(nowhere.resolve("unfinished.pdf"), server.bean(EvidenceFiles.class).pdf(unfinished));
        Ran ran = verify(file, "--key", key);
        assertThat(ran.said()).contains("THE RECORD IS NOT FINISHED");
        assertThat(ran.status()).isZero();
    }

    @Test
    void flips_all_over_a_real_file_are_found() throws IOException {
        byte[] file = Files.readAllBytes(json);
        EvidenceVerifier verifier = new EvidenceVerifier(List.of(NoteVerifier.parse(key).orElseThrow()),
                Optional.empty());
        int[] places = new Random(4711).ints(FLIPS, 0, file.length).toArray();
        List<Integer> taken = IntStream.of(places).filter(at -> {
            byte[] flipped = file.clone();
            flipped[at] ^= 1;
            return !(verifier.verify(flipped) instanceof Verdict.Broken);
        }).boxed().toList();
        assertThat(taken).isEmpty();
    }

    @Test
    void the_script_that_shares_nothing_with_us_comes_to_the_same() throws Exception {
        boolean there = run("sh", "-c", "command -v python3 && command -v openssl").status() == 0;
        if (!there) {
            System.out.println("NOT TESTED: docs/check_evidence.py, because there is no python3 or no openssl");
        }
        assumeTrue(there);
        Ran ran = run("python3", Path.of("docs/check_evidence.py").toAbsolutePath().toString(), json.toString(), key);
        assertThat(ran.said()).startsWith("fits: " + welded);
        assertThat(ran.status()).isZero();
    }

    @Test
    void while_a_key_takes_over_from_another_either_vouches() throws Exception {
        Seals seals = server.bean(Seals.class);
        Outcome<?> rotated = seals.rotate(false, "the year is over", new Origin(server.bean(ShopClock.class).now(),
                new BadgeId("P-0001"), "office", true));
        seals.covering(((Outcome.Done<?>) rotated).entries().getLast().position());
        String next = seals.keys().getLast().key().text();
        assertThat(next).isNotEqualTo(key);
        Path file = Files.write(nowhere.resolve("rotated.json"), server.bean(EvidenceFiles.class).json(welded));
        assertThat(verify(file, "--key", key).status()).isZero();
        assertThat(verify(file, "--key", next).status()).isZero();
        assertThat(verify(json, "--key", next).said()).contains("No key that was given");
    }

    @Test
    void there_is_no_evidence_of_a_traveller_that_does_not_exist() {
        assertThatThrownBy(() -> server.bean(EvidenceFiles.class).json(new TravellerId("T-9999999")))
                .isInstanceOf(NoSuchElementException.class);
    }

    private static Page signedIn(BrowserContext where, BadgeId badge, String pin) {
        Page opened = where.newPage();
        opened.setDefaultTimeout(PATIENCE_MILLIS);
        opened.navigate(server.url("/sign-in?badge=" + badge));
        pin.chars().forEach(digit -> press(opened, String.valueOf((char) digit)));
        press(opened, "Enter");
        opened.waitForURL(url -> !url.contains("sign-in"));
        return opened;
    }

    private static void press(Page opened, String words) {
        opened.locator("shop-key-pad").getByRole(AriaRole.BUTTON,
                new Locator.GetByRoleOptions().setName(words).setExact(true)).click();
    }

    @Test
    void an_inspector_takes_both_files_from_the_record_and_a_fabricator_gets_neither() throws Exception {
        try (BrowserContext desk = Chromium.browser().newContext();
                BrowserContext bench = Chromium.browser().newContext()) {
            Page page = signedIn(desk, new BadgeId("P-0301"), "725948");
            page.navigate(server.url("/stamp/" + welded));
            assertThat(page.getByText("Record with evidence (PDF)"))
                    .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(PATIENCE_MILLIS));
            for (int[] size : new int[][] {{800, 1280}, {1280, 800}}) {
                page.setViewportSize(size[0], size[1]);
                page.screenshot(new Page.ScreenshotOptions()
                        .setPath(SHOTS.resolve("evidence-buttons-%dx%d.png".formatted(size[0], size[1]))));
                assertThat((int) page.evaluate("document.documentElement.scrollWidth")).isLessThanOrEqualTo(size[0]);
            }
            assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
            Path taken = Files.write(nowhere.resolve("taken.pdf"),
                    page.request().get(server.url("/stamp/" + welded + "/evidence.pdf")).body());
            assertThat(verify(taken, "--key", key).status()).isZero();
            String text = page.request().get(server.url("/stamp/" + welded + "/evidence.json")).text();
            assertThat(text.getBytes(StandardCharsets.UTF_8).length).isPositive();
            assertThat(text).startsWith("{\"checkpoint\":");
            assertThat(page.request().get(server.url("/stamp/T-9999999/evidence.pdf")).status()).isEqualTo(404);
            Page fabricator = signedIn(bench, new BadgeId("P-0101"), "482615");
            for (String file : List.of("evidence.pdf", "evidence.json")) {
                assertThat(fabricator.request().get(server.url("/stamp/" + welded + "/" + file)).status())
                        .isEqualTo(403);
            }
        }
    }
}
