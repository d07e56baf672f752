package brightseam.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.StringReader;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SeriesChartTest {

    private static final long START = 5_000_000;
    private static final long GAP_MILLIS = 10_000;
    private static final Instant WALL = Instant.parse("2031-10-14T13:41:00Z");

    @Test
    void a_purge_spans_powers_of_ten_and_a_decade_is_as_high_as_the_next() {
        ValueScale scale = purge(List.of()).scale(300, 0);
        assertThat(scale.at(100) - scale.at(1000)).isCloseTo(scale.at(1000) - scale.at(10_000), within(1e-9));
        assertThat(scale.low()).isEqualTo(10);
        assertThat(scale.high()).isEqualTo(500_000);
        assertThat(scale.ticks()).containsExactly(10.0, 100.0, 1000.0, 10_000.0, 100_000.0);
    }

    @Test
    void a_joint_s_trace_starts_at_zero() {
        ValueScale scale = trace(List.of()).scale(300, 0);
        assertThat(scale.at(0)).isEqualTo(300);
        assertThat(scale.ticks()).startsWith(0.0).contains(40.0);
        assertThat(scale.high()).isGreaterThanOrEqualTo(47);
    }

    @Test
    void readings_further_apart_than_a_gap_are_not_joined() throws Exception {
        List<ChartPoint> whole = points(120, 2_000);
        List<ChartPoint> torn = new ArrayList<>(whole);
        torn.removeIf(point -> point.atMillis() > START + 60_000 && point.atMillis() < START + 80_000);
        assertThat(lines(trace(whole))).isEqualTo(1);
        assertThat(lines(trace(torn))).isEqualTo(2);
        assertThat(trace(torn).words()).contains("1 gap in the readings, longest 20 s");
        assertThat(trace(whole).words()).doesNotContain("gap");
    }

    @Test
    void doubtful_readings_are_told_by_their_shapes_and_named_below() throws Exception {
        List<ChartPoint> points = new ArrayList<>(points(20, 2_000));
        points.add(new ChartPoint(START + 40_000, 22, ChartPoint.Doubt.FROZEN));
        points.add(new ChartPoint(START + 42_000, 22, ChartPoint.Doubt.TYPED));
        assertThat(texts(trace(points))).contains("frozen", "typed in").doesNotContain("late");
    }

    @Test
    void the_limit_is_a_line_with_its_value_and_the_words_say_how_it_stands() throws Exception {
        SeriesChart chart = trace(points(30, 2_000));
        assertThat(texts(chart)).contains("limit 40\u00a0ppm", "ppm", "s since 13:41:00");
        assertThat(chart.words()).startsWith("Oxygen <chamber>, 13:41 to 13:45: last ")
                .contains("within the limit of 40\u00a0ppm");
        assertThat(trace(List.of(ChartPoint.good(START, 47))).words()).contains("above the limit");
    }

    @Test
    void a_fit_says_when_the_limit_is_reached_and_how_sure_that_is() throws Exception {
        SeriesChart chart = purge(points(30, 60_000));
        assertThat(texts(chart)).contains("fit at 14:32 (14:26 to 14:41)", "min since 13:41:00");
        assertThat(chart.words()).contains("fit at 14:32 (14:26 to 14:41)");
    }

    @Test
    void no_readings_are_no_line() throws Exception {
        SeriesChart chart = trace(List.of());
        assertThat(texts(chart)).contains("no readings yet");
        assertThat(chart.words()).endsWith("no readings.");
        assertThat(lines(chart)).isZero();
    }

    @Test
    void a_day_is_read_by_the_clock() {
        ChartWindow day = new ChartWindow(START, START + 8 * 3_600_000, WALL, ZoneOffset.UTC);
        assertThat(day.ticks()).extracting(ChartWindow.Tick::label)
                .containsExactly("14:00", "15:00", "16:00", "17:00", "18:00", "19:00", "20:00", "21:00");
        assertThat(day.unit()).isEqualTo("clock time");
    }

    @Test
    void paper_shows_what_the_screen_shows() throws Exception {
        for (SeriesChart chart : List.of(purge(points(30, 60_000)), trace(points(120, 2_000)))) {
            BufferedImage sheet = new BufferedImage(2 * SeriesChart.WIDTH, 2 * SeriesChart.HEIGHT,
                    BufferedImage.TYPE_INT_RGB);
            Graphics2D pen = sheet.createGraphics();
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.scale(2, 2);
            pen.setColor(Color.WHITE);
            pen.fillRect(0, 0, SeriesChart.WIDTH, SeriesChart.HEIGHT);
            chart.draw(new PaperCanvas(pen));
            File picture = new File("target/screenshots/chart-" + (chart.logarithmic() ? "purge" : "joint") + ".png");
            picture.getParentFile().mkdirs();
            ImageIO.write(sheet, "png", picture);
            // The limit's line runs across the paper where the scale puts it.
            double y = chart.scale(330, 54).at(chart.limit().orElseThrow());
            for (int x = 260; x < 700; x += 100) {
                assertThat(sheet.getRGB(x, (int) (2 * y)) & 0xff).as("at " + x).isLessThan(90);
            }
        }
    }

    private static SeriesChart purge(List<ChartPoint> points) {
        List<ChartFit.Spot> curve = new ArrayList<>();
        for (long minute = 0; minute <= 60; minute += 2) {
            double middle = 209_460 * Math.exp(-minute / 6.0) + 25;
            double wide = Math.exp(Math.max(0, minute - 29) / 60.0);
            curve.add(new ChartFit.Spot(START + minute * 60_000, middle / wide, middle, middle * wide));
        }
        ChartFit fit = new ChartFit(curve, 0.9, Optional.of(new ChartFit.Arrival(
                START + 51 * 60_000, START + 45 * 60_000, START + 60 * 60_000)));
        return new SeriesChart("Oxygen <chamber>", "ppm", true,
                new ChartWindow(START, START + 62 * 60_000, WALL, ZoneOffset.UTC), points, 90_000, Optional.of(40.0),
                Optional.of(fit), List.of());
    }

    private static SeriesChart trace(List<ChartPoint> points) {
        return new SeriesChart("Oxygen <chamber>", "ppm", false,
                new ChartWindow(START, START + 240_000, WALL, ZoneOffset.UTC), points, GAP_MILLIS, Optional.of(40.0),
                Optional.empty(), List.of(new SeriesChart.Stretch("arc", START + 30_000, START + 110_000)));
    }

    private static List<ChartPoint> points(int count, long everyMillis) {
        List<ChartPoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double minutes = i * everyMillis / 60_000.0;
            points.add(ChartPoint.good(START + i * everyMillis,
                    everyMillis >= 60_000 ? 209_460 * Math.exp(-minutes / 6.0) + 25 : 28 + 6 * Math.sin(i / 9.0)));
        }
        return points;
    }

    private static long lines(SeriesChart chart) throws Exception {
        return elements(chart, "path").stream().filter(path -> path.getAttribute("stroke-width").equals("2.5")
                && path.getAttribute("stroke-dasharray").isEmpty()).count();
    }

    private static List<String> texts(SeriesChart chart) throws Exception {
        return elements(chart, "text").stream().map(Element::getTextContent).toList();
    }

    private static List<Element> elements(SeriesChart chart, String tag) throws Exception {
        NodeList found = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(chart.svg()))).getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }
}
