package brightseam.ui.parts;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.EventData;

/** A scan came in. The data comes from the page: parse it as any input from outside. */
@DomEvent("scan")
public class Scanned extends ComponentEvent<Component> {

    /** The page cuts longer scans; data of a page that does not is cut here. */
    public static final int LENGTH_MAX = 1024;

    private final String data;
    private final ScanSource source;

    /** Called by the framework. */
    public Scanned(Component part, boolean fromClient, @EventData("event.detail.data") String data,
            @EventData("event.detail.source") String source) {
        super(part, fromClient);
        String whole = data == null ? "" : data;
        this.data = whole.substring(0, Math.min(whole.length(), LENGTH_MAX));
        this.source = ScanSource.ofPage(source);
    }

    /** What was read, with separators (GS, RS, EOT) and an AIM prefix where the scanner sent them. */
    public String data() {
        return data;
    }

    /** How it came in. */
    public ScanSource source() {
        return source;
    }
}
