package brightseam.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.server.VaadinSession;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.Supplier;

/** Files that a page gives away, made when they are asked for. */
public final class Files {

    private Files() {}

    /** A link that opens a PDF in a page of its own. */
    public static Anchor pdf(String words, String name, Supplier<byte[]> content) {
        Anchor link = new Anchor(DownloadHandler.fromInputStream(asked -> response(
                content.get(), name, "application/pdf")).inline(), words);
        link.setTarget(AnchorTarget.BLANK);
        link.addClassNames("desk-button");
        return link;
    }

    /** A link that saves a list as comma-separated text. */
    public static Anchor csv(String words, String name, Supplier<String> content) {
        Anchor link = new Anchor(DownloadHandler.fromInputStream(asked -> response(
                content.get().getBytes(StandardCharsets.UTF_8), name, "text/csv; charset=utf-8")), words);
        link.addClassNames("desk-button");
        return link;
    }

    /** A link under {@code table} that saves its rows; the file is called after its page and what it is. */
    static Anchor csvOf(Component table, String caption, Supplier<String> content) {
        Anchor link = new Anchor(DownloadHandler.fromInputStream(asked -> {
            VaadinSession session = asked.getSession();
            session.lock();
            try {
                return response(content.get().getBytes(StandardCharsets.UTF_8), name(table, caption),
                        "text/csv; charset=utf-8");
            } finally {
                session.unlock();
            }
        }), "Save as CSV");
        link.getElement().setAttribute("aria-label", "Save as CSV: " + caption);
        link.addClassName("desk-csv");
        return link;
    }

    private static String name(Component table, String caption) {
        String page = table.getUI().map(ui -> ui.getInternals().getActiveViewLocation().getPath()).orElse("");
        String words = (page + "-" + caption.split("[,;:]")[0]).toLowerCase(Locale.ROOT);
        return words.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "") + ".csv";
    }

    private static DownloadResponse response(byte[] content, String name, String type) {
        return new DownloadResponse(new ByteArrayInputStream(content), name, type, content.length);
    }
}
