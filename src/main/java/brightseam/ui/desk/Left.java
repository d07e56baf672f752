package brightseam.ui.desk;

import brightseam.words.Words;
import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import java.time.Duration;
import java.time.Instant;

/** How long until something, as words that run on in the page: {@code in 12 min}, {@code 3 min ago}. */
@Tag("shop-left")
public final class Left extends Component {

    private long run;

    /** Makes it; {@code left} is shop time from now, negative where it is past. */
    public Left(Duration left, double speed) {
        getElement().setText(Words.distance(Instant.EPOCH.plus(left), Instant.EPOCH));
        show(left, speed);
    }

    /** Tells the page anew. */
    public void show(Duration left, double speed) {
        getElement().setAttribute("left-ms", String.valueOf(left.toMillis()));
        getElement().setAttribute("speed", String.valueOf(speed));
        getElement().setAttribute("run", String.valueOf(++run));
    }

    @Override
    protected void onAttach(AttachEvent attached) {
        attached.getUI().getPage().addJsModule("context://frontend/left.js");
    }
}
