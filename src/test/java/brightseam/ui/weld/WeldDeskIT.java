package brightseam.ui.weld;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.demo.DemoPerson;
import brightseam.demo.Lots;
import brightseam.device.Feed;
import brightseam.device.Meter;
import brightseam.device.MeterCommand;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.MeterTerms;
import brightseam.device.Reading;
import brightseam.device.shell.Meters;
import brightseam.device.shell.Readings;
import brightseam.kernel.ContactKind;
import brightseam.kernel.HeatId;
import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.Ledger;
import brightseam.line.shell.Stations;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary.SupplyType;
import brightseam.supply.SupplyCommand;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.board.DeskBrowser;
import brightseam.weld.ArcSetting;
import brightseam.weld.ArgonFact;
import brightseam.weld.BackSide;
import brightseam.weld.GasReading;
import brightseam.weld.Weld;
import brightseam.weld.shell.JointStory;
import brightseam.weld.shell.Joints;
import brightseam.weld.shell.WeldMaps;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.IntToDoubleFunction;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** A lead draws and issues a weld map, an inspector judges its joints, in a real browser. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class WeldDeskIT {

    private static final KitId KIT = new KitId("K-901");
    private static final SupplyId OXYGEN = new SupplyId("G-9901");
    private static final SupplyId LIGHT = new SupplyId("G-9902");
    private static final String REST = ",1,below 427 degC,trial ring 12,iso-9606-5,";
    private static final String LIST = "joint,description,class,parts,back_side,back_side_reason,filler,"
            + "cooling_minutes,cooling_until,cooling_source,acceptance,x,y\n"
            + "J01,\"Main tube to foot fitting, port\",A,1/1 2/1,purged,,ERTi-9" + REST + "250,700\n"
            + "J02,\"Main tube to foot fitting, starboard\",A,1/1 2/2,purged,,ERTi-9" + REST + "750,700\n"
            + "J03,Clamp to main tube,C,1/1 2/3,open,\"solid, nothing behind it gets hot\"," + REST + ",\n";

    private static ShopServer server;
    private static DemoClock clock;

    @BeforeAll
    static void open() {
        server = ShopServer.demo("--brightseam.demo-past=false");
        clock = server.bean(DemoClock.class);
        Lots lots = server.bean(Lots.class);
        List<Lots.Lot> parts = List.of(
                new Lots.Lot("HDF-9100-01", "Mast, main tube", 1, new HeatId("H-4502"), "TUBE"),
                new Lots.Lot("HDF-9100-10", "Mast, foot fitting", 3, new HeatId("H-2208"), "FITTING"));
        lots.open(KIT, "Short mast", Duration.ofHours(6), parts);
        lots.release(KIT, parts);
        gauge(OXYGEN, "oxygen-analyser");
        gauge(LIGHT, "light-meter");
        StationId chamber = server.bean(Stations.class).all().stream()
                .filter(one -> one.stationClass().equals("chamber")).findFirst().orElseThrow().id();
        done(server.bean(Meters.class).execute(new MeterCommand.RegisterMeter(OXYGEN, MeterTerms.of(new Meter(OXYGEN,
                chamber, MeterPlace.CHAMBER, MeterQuantity.OXYGEN_PPM, 0, 1000, 0.1, Duration.ofSeconds(1),
                Duration.ofSeconds(2), new Feed.Http())), origin(), new Signer(DemoPerson.BRAM_ODUYA.badge(),
                "Bram Oduya", List.of(Role.LEAD), Optional.empty(), "badge+pin"))));
    }

    @AfterAll
    static void leave() {
        server.close();
    }

    private static Origin origin() {
        return new Origin(clock.now(), DemoPerson.BRAM_ODUYA.badge(), "desk", true);
    }

    private static void gauge(SupplyId id, String type) {
        done(server.bean(Supplies.class).execute(new SupplyCommand.RegisterSupply(id,
                new SupplyType(type, type, ContactKind.GAUGE, Set.of(Surface.UNCLEANED)), "Of the test", "SN-" + id,
                "Fennmark", Optional.of(Supplies.day(clock.now()).plusDays(90)), Set.of(Surface.UNCLEANED),
                origin())));
    }

    private static <R> R done(Outcome<R> outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Done.class);
        return ((Outcome.Done<R>) outcome).result();
    }

    /** A drawing of a mast, or a noisy photograph of several megabytes. */
    private static FilePayload picture(String name, boolean photograph) {
        try {
            BufferedImage image = new BufferedImage(1200, 900, BufferedImage.TYPE_INT_RGB);
            Graphics2D pen = image.createGraphics();
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setColor(Color.WHITE);
            pen.fillRect(0, 0, 1200, 900);
            pen.setColor(Color.BLACK);
            pen.setStroke(new BasicStroke(6));
            pen.drawRect(560, 60, 80, 580);
            pen.drawLine(560, 640, 300, 840);
            pen.drawLine(640, 640, 900, 840);
            Random random = new Random(3);
            for (int i = 0; photograph && i < 1200 * 900; i++) {
                image.setRGB(i % 1200, i / 1200, random.nextInt() & 0x3F3F3F | 0x909090);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(image, "png", out);
            return new FilePayload(name, "image/png", out.toByteArray());
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static void upload(Locator within, FilePayload file) {
        within.locator("input[type=file]").setInputFiles(file);
    }

    private static void reads(int seconds, IntToDoubleFunction ppm) {
        for (int i = 0; i < seconds; i++) {
            clock.skip(Duration.ofSeconds(1));
            server.bean(Readings.class).take(OXYGEN,
                    List.of(new Reading(clock.now().elapsedMillis(), ppm.applyAsDouble(i))));
        }
    }

    private static void waits(Page page, BooleanSupplier until) {
        for (int i = 0; i < 100 && !until.getAsBoolean(); i++) {
            page.waitForTimeout(200);
        }
        assertThat(until.getAsBoolean()).isTrue();
    }

    /** Welds a joint of the issued map over what the meter reads meanwhile. */
    private static void welded(Page page, String number, IntToDoubleFunction ppm) {
        JointId id = new JointId(KIT, number);
        JointStory story = new JointStory(server.bean(Ledger.class), id);
        List<TravellerId> travellers = server.bean(Travellers.class).labelsOfKit(KIT);
        reads(5, second -> 8);
        Origin welder = new Origin(clock.now(), DemoPerson.RHEA_TOLLAND.badge(), "chamber", true);
        story.begins(welder, server.bean(Joints.class).view(id).orElseThrow().plan(), new ArcSetting(Weld.SESSION,
                new StationId("CH-01"), DemoPerson.RHEA_TOLLAND.badge(), "Rhea Tolland", Optional.empty(),
                Optional.of("T-0090"), BackSide.PURGED, Optional.empty(), new GasReading(OXYGEN,
                Optional.of(new BigDecimal("8.0")), new BigDecimal("30"), Optional.empty()), Optional.empty(),
                new ArgonFact(new SupplyId("A-0001"), "AR-77"), travellers, Duration.ofSeconds(5), true));
        reads(40, ppm);
        story.ends(new Origin(clock.now(), DemoPerson.RHEA_TOLLAND.badge(), "chamber", true));
        reads(75, second -> 8 + second % 3);
        waits(page, () -> server.bean(Joints.class).find(id).orElseThrow().state().isSettled());
    }

    @Test
    @Order(1)
    void a_lead_reads_joints_in_puts_them_on_the_picture_and_issues_the_map() {
        try (DeskBrowser lead = new DeskBrowser(server, DemoPerson.BRAM_ODUYA)) {
            lead.open("/board/kit/" + KIT + "/weld-map").shows("It has none yet");
            lead.fill("Drawing", "HDF-9100 A, short mast").fill("Joints as CSV", LIST.replace("1/1 2/1", "1/1"))
                    .press("Check the list and take it").hears("List not used").shows("two or more pieces");
            lead.look("weld-map-bad-list");
            lead.fill("Joints as CSV", LIST).press("Check the list and take it").hears("Drawn");
            Page page = lead.page();
            upload(page.locator(".weld-drawn"), picture("mast.png", false));
            lead.hears("The picture is on the map");
            assertThat(page.locator(".weld-mark")).hasCount(2);
            lead.shows("Not on the picture: J03");
            page.locator(".weld-drawn vaadin-select").click();
            page.locator("vaadin-select-item").filter(new Locator.FilterOptions().setHasText("J03")).click();
            page.locator(".weld-map").click(new Locator.ClickOptions().setPosition(300, 200));
            assertThat(page.locator(".weld-mark")).hasCount(3);
            lead.look("weld-map");
            lead.fill("Your PIN", DemoPerson.BRAM_ODUYA.pin()).press("Issue and sign").hears("Issued");
            assertThat(server.bean(WeldMaps.class).find(KIT).orElseThrow().state().issues()).hasSize(1);
        }
    }

    @Test
    @Order(2)
    void an_inspector_judges_joints_by_swatch_light_and_photograph() {
        try (DeskBrowser inspector = new DeskBrowser(server, DemoPerson.SANNA_VEIT)) {
            Page page = inspector.page();
            welded(page, "J01", second -> 8 + second % 3);
            welded(page, "J02", second -> second > 10 && second < 15 ? 46 : 9);
            inspector.open("/stamp/joints").shows("2 to judge");
            inspector.open("/stamp/joints/" + KIT).shows("oxygen in doubt");
            inspector.look("joints");
            inspector.open("/stamp/joints/" + KIT + "/J01").shows("While the arc ran: proven");
            touch(page, ".swatches:not(.swatches-band)", "brown");
            assertThat(page.locator(".judge-ruling")).containsText("rejects brown");
            inspector.look("joint-judge-reject");
            touch(page, ".swatches:not(.swatches-band)", "brown");
            touch(page, ".swatches:not(.swatches-band)", "light-straw");
            touch(page, ".swatches-band", "violet");
            inspector.picks("Before anything was brushed").fill("Light at the joint, lux", "640")
                    .fill("Light meter", LIGHT.value());
            upload(page.locator(".judge"), picture("joint.png", true));
            assertThat(page.locator(".judge-photographs img")).hasCount(1);
            sign(inspector, "Accept and stamp");
            inspector.hears("Too dark").fill("Light at the joint, lux", "1250");
            inspector.look("joint-judge");
            sign(inspector, "Accept and stamp");
            inspector.hears("Accepted").shows("Accepted by Sanna Veit");
            assertThat(page.locator(".joint-judged img").evaluate("image => image.naturalWidth")).isEqualTo(1200);
            inspector.look("joint-accepted");
        }
    }

    @Test
    @Order(3)
    void a_rejected_joint_stops_its_travellers_and_an_excursion_has_done_so_before() {
        try (DeskBrowser inspector = new DeskBrowser(server, DemoPerson.SANNA_VEIT)) {
            Page page = inspector.page();
            inspector.open("/stamp/joints/" + KIT + "/J02").shows("While the arc ran: above the limit");
            touch(page, ".swatches:not(.swatches-band)", "dark-blue");
            inspector.picks("Before anything was brushed").fill("Light at the joint, lux", "1250")
                    .fill("Light meter", LIGHT.value());
            sign(inspector, "Accept and stamp");
            inspector.hears("Colour rejects");
            sign(inspector, "Reject and stamp");
            inspector.hears("Rejected").shows("Rejected by Sanna Veit");
            inspector.look("joint-rejected");
        }
        assertThat(server.bean(Travellers.class).ofKit(KIT)).allSatisfy(card ->
                assertThat(card.traveller().nonconformances()).extracting(Nonconformance::cause).contains(
                        Nonconformance.Cause.JOINT_EXCURSION, Nonconformance.Cause.JOINT_REJECTED));
    }

    private static void touch(Page page, String row, String colour) {
        page.locator(row + " [data-colour=" + colour + "]").click();
    }

    private static void sign(DeskBrowser inspector, String words) {
        inspector.fill("Your PIN", DemoPerson.SANNA_VEIT.pin()).press(words);
    }
}
