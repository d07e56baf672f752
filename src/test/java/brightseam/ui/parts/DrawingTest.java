package brightseam.ui.parts;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Limits;
import brightseam.procedure.Hold;
import java.io.StringReader;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class DrawingTest {

    private static final Hold PICKLE = new Hold(Duration.ofMinutes(2), Optional.of(Duration.ofMinutes(5)));
    private static final Limits RANGE =
            new Limits(Optional.of(new BigDecimal("45")), Optional.of(new BigDecimal("60")));

    @Test
    void a_hold_says_how_it_stands_to_its_limits() {
        assertThat(held(70).words()).isEqualTo("Acid pickle: held 1 min 10 s, shorter than the minimum.");
        assertThat(held(120).words()).endsWith("within its limits.");
        assertThat(held(300).words()).endsWith("within its limits.");
        assertThat(held(301).words()).endsWith("over the maximum.");
    }

    @Test
    void a_bar_has_its_length_from_zero_and_its_limits_in_the_same_measure() throws Exception {
        Document drawn = parsed(held(150));
        double bar = number(all(drawn, "rect").getFirst(), "width");
        List<Element> lines = all(drawn, "line");
        double minimum = number(lines.get(0), "x1") - 20;
        double maximum = number(lines.get(1), "x1") - 20;
        assertThat(bar / minimum).isCloseTo(150.0 / 120, org.assertj.core.data.Offset.offset(0.01));
        assertThat(maximum / minimum).isCloseTo(300.0 / 120, org.assertj.core.data.Offset.offset(0.01));
        assertThat(texts(drawn)).contains("min 2 min", "max 5 min", "0", "min");
    }

    @Test
    void what_is_over_is_striped_and_what_is_not_is_not() throws Exception {
        assertThat(all(parsed(held(300)), "rect")).hasSize(1);
        assertThat(all(parsed(held(342)), "rect").size()).isGreaterThan(3);
    }

    @Test
    void a_reading_stands_inside_or_outside_its_limits() throws Exception {
        Document inside = parsed(new ReadingScale("Bath <1>", "°C", RANGE, new BigDecimal("52.5")));
        Document outside = parsed(new ReadingScale("Bath <1>", "°C", RANGE, new BigDecimal("63")));
        assertThat(inside.getDocumentElement().getAttribute("aria-label"))
                .isEqualTo("Bath <1>: 52.5\u00a0°C, in order (45 to 60\u00a0°C).");
        assertThat(outside.getDocumentElement().getAttribute("aria-label")).contains("not in order");
        assertThat(all(inside, "path").getFirst().getAttribute("fill")).isEqualTo("#000");
        assertThat(all(outside, "path").getFirst().getAttribute("fill")).isEqualTo("#fff");
    }

    @Test
    void a_scale_has_round_ticks_even_for_one_limit_no_limit_and_zero() throws Exception {
        for (String value : List.of("0", "0.0004", "-70", "99999", "12.34")) {
            Document drawn = parsed(new ReadingScale("Reading", "x", Limits.none(), new BigDecimal(value)));
            List<Element> lines = all(drawn, "line");
            assertThat(lines.size()).as(value).isBetween(4, 14);
            assertThat(drawn.getDocumentElement().getTextContent()).doesNotContain("NaN");
        }
    }

    private static HoldBar held(long seconds) {
        return new HoldBar("Acid pickle", PICKLE, Duration.ofSeconds(seconds));
    }

    private static Document parsed(Drawing drawing) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(drawing.svg())));
    }

    private static List<Element> all(Document drawn, String tag) {
        NodeList found = drawn.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int index = 0; index < found.getLength(); index++) {
            elements.add((Element) found.item(index));
        }
        return elements;
    }

    private static List<String> texts(Document drawn) {
        return all(drawn, "text").stream().map(Element::getTextContent).toList();
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
