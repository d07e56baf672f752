package brightseam.report.shell;

import brightseam.chart.SeriesChart;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * XHTML as a tree that is never parsed: what people wrote is put in as text nodes, so nothing in it can become markup.
 */
final class Sheet {

    private static final String STYLE = "/report/record.css";
    /** What XML 1.0 has no place for (section 2.2), and control characters that no printer shows. */
    private static final String UNPRINTABLE = "[\\p{Cc}&&[^\\n]]|[\\ufffe\\uffff]|\\p{Cs}";

    private final Document document;
    private final Element body;
    private final List<SeriesChart> charts = new ArrayList<>();

    Sheet(String title) {
        try {
            document = DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().newDocument();
        } catch (ParserConfigurationException impossible) {
            throw new IllegalStateException("every Java platform builds documents", impossible);
        }
        Element html = document.createElement("html");
        document.appendChild(html);
        Element head = add(html, "head", "");
        write(add(head, "title", ""), title);
        write(add(head, "style", ""), style());
        body = add(html, "body", "");
    }

    Document document() {
        return document;
    }

    Element body() {
        return body;
    }

    Element add(Element parent, String tag, String cssClass) {
        Element child = document.createElement(tag);
        if (!cssClass.isEmpty()) {
            child.setAttribute("class", cssClass);
        }
        parent.appendChild(child);
        return child;
    }

    Element add(Element parent, String tag, String cssClass, String text) {
        Element child = add(parent, tag, cssClass);
        write(child, text);
        return child;
    }

    void write(Element parent, String text) {
        parent.appendChild(document.createTextNode(text.replaceAll(UNPRINTABLE, "\u25a1")));
    }

    /** A chart, with its sentence for whoever cannot see it. */
    void chart(Element parent, SeriesChart chart) {
        Element drawn = add(parent, "object", "chart");
        drawn.setAttribute("type", ChartDrawer.TYPE);
        drawn.setAttribute(ChartDrawer.NUMBER, String.valueOf(charts.size()));
        charts.add(chart);
        add(parent, "p", "chart-words", chart.words());
    }

    /** The charts by their numbers. */
    List<SeriesChart> charts() {
        return List.copyOf(charts);
    }

    /** A row of a table of two columns. */
    void fact(Element table, String name, String value) {
        Element row = add(table, "tr", "");
        add(row, "th", "", name);
        add(row, "td", "", value);
    }

    /** A table with a head that is repeated on every page; heads by words, with the CSS class of their column. */
    Element table(Element parent, String cssClass, Map<String, String> heads) {
        Element table = add(parent, "table", cssClass);
        Element row = add(add(table, "thead", ""), "tr", "");
        heads.forEach((words, column) -> add(row, "th", column, words));
        return add(table, "tbody", "");
    }

    /** Heads of a table: CSS class, words, CSS class, words and so on. */
    static Map<String, String> heads(String... classesAndWords) {
        Map<String, String> heads = new LinkedHashMap<>();
        for (int i = 0; i < classesAndWords.length; i += 2) {
            heads.put(classesAndWords[i + 1], classesAndWords[i]);
        }
        return heads;
    }

    void row(Element tbody, List<String> cells) {
        Element row = add(tbody, "tr", "");
        cells.forEach(cell -> add(row, "td", "", cell));
    }

    /** Where something lies on a drawing, in percent of its width. */
    static String left(double percent) {
        return String.format(Locale.ROOT, "left: %.2f%%;", Math.clamp(percent, 0, 100));
    }

    private static String style() {
        try (InputStream css = Sheet.class.getResourceAsStream(STYLE)) {
            return new String(css.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(STYLE, unreadable);
        }
    }
}
