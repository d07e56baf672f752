package brightseam.ui.parts;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasComponents;
import com.vaadin.flow.component.Tag;

/** Numbers that come from the server every second; where they stop coming, the page says that they stand still. */
@Tag("shop-live-place")
public final class LivePlace extends Part implements HasComponents {

    private long beat;

    /** Makes the place round {@code content}. */
    public LivePlace(Component... content) {
        super("live-place.js");
        add(content);
        beat();
    }

    /** Tells the page that its numbers are those of now. */
    public void beat() {
        say("beat", ++beat);
    }
}
