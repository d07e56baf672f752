package brightseam.ui.parts;

import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.shared.Registration;

/** A button that opens the camera with its aiming frame, for screens without a {@link ScanInput}. */
@Tag("shop-camera-scanner")
public final class CameraScanner extends Part {

    /** Makes the button; frames that the browser cannot read itself go to {@code reader}. */
    public CameraScanner(String words, FrameReader reader) {
        super("camera-button.js");
        say("words", words);
        say("frame-url", reader.url());
        say("csrf-header", reader.csrfHeader());
        say("csrf-token", reader.csrfToken());
    }

    /** Calls {@code listener} for every label read; the source is the camera. */
    public Registration addScanListener(ComponentEventListener<Scanned> listener) {
        return addListener(Scanned.class, listener);
    }
}
