package brightseam.ui.parts;

import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.shared.Registration;
import java.time.Duration;

/**
 * The page's one ear for scans: a hand scanner at any moment whatever has the focus, the camera, or typing as the last
 * resort. One of these a page.
 */
@Tag("shop-scan-input")
public final class ScanInput extends Part {

    /** Makes the input; camera frames that the browser cannot read itself go to {@code reader}. */
    public ScanInput(FrameReader reader) {
        super("scan-input.js");
        say("frame-url", reader.url());
        say("csrf-header", reader.csrfHeader());
        say("csrf-token", reader.csrfToken());
    }

    /**
     * Sets how scanners are told from people; to be called before the part is shown.
     *
     * @param burst the longest time between two keys of a scanner; 40 ms unless set, more for slow radio scanners
     * @param idle the silence that ends a scan without a terminator; 120 ms unless set
     * @param shortest the fewest characters that are taken for a scan; 4 unless set
     */
    public void timing(Duration burst, Duration idle, int shortest) {
        say("burst-ms", burst.toMillis());
        say("idle-ms", idle.toMillis());
        say("shortest", shortest);
    }

    /** Calls {@code listener} for every scan. */
    public Registration addScanListener(ComponentEventListener<Scanned> listener) {
        return addListener(Scanned.class, listener);
    }
}
