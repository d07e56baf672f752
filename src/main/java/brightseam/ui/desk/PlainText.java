package brightseam.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.dom.Element;
import java.util.Set;
import java.util.regex.Pattern;

/** The words of a component in one line: what stands in a line of its own on the page is parted by a semicolon. */
final class PlainText {

    private static final Set<String> LINES = Set.of("div", "p", "li", "ul", "ol", "details", "dd", "dt");
    private static final Pattern PARTS = Pattern.compile("\\s*\\u0000[\\s\\u0000]*");
    private static final String PART = "\u0000";

    private PlainText() {}

    /** The words of {@code component} and of all that lies in it. */
    static String of(Component component) {
        StringBuilder words = new StringBuilder();
        collect(component.getElement(), words);
        return PARTS.matcher(words.toString().replaceAll("^[\\s\\u0000]+|[\\s\\u0000]+$", "")).replaceAll("; ");
    }

    private static void collect(Element element, StringBuilder words) {
        if (element.isTextNode()) {
            words.append(element.getText());
            return;
        }
        String edge = LINES.contains(element.getTag()) ? PART : "";
        words.append(edge);
        for (int i = 0; i < element.getChildCount(); i++) {
            collect(element.getChild(i), words);
            words.append(element.getChild(i).isTextNode() ? "" : " ");
        }
        words.append(edge);
    }
}
