package brightseam.ui.parts;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import java.util.List;

/** The rest of the steps as a thin strip of numbers with marks; to be looked at, not pressed. */
@Tag("ol")
@StyleSheet("context://frontend/shop.css")
public final class StepStrip extends Component {

    /** Where a step stands. */
    public enum State {
        /** Signed. */
        SIGNED("signed", Mark.Kind.SIGNED),
        /** The step to do now. */
        NOW("now", Mark.Kind.NOW),
        /** Not yet reached. */
        TO_COME("to come", Mark.Kind.TO_COME),
        /** An inspection point not yet reached. */
        STAMP_TO_COME("inspection point, to come", Mark.Kind.STAMP),
        /** Signed once, undone by rework. */
        SUPERSEDED("superseded by rework", Mark.Kind.SUPERSEDED),
        /** Stopped by a nonconformance. */
        STOPPED("stopped", Mark.Kind.STOPPED);

        private final String words;
        private final Mark.Kind mark;

        State(String words, Mark.Kind mark) {
            this.words = words;
            this.mark = mark;
        }
    }

    /**
     * One step of the strip.
     *
     * @param number what people call it
     * @param title a few words, for screen readers
     * @param state where it stands
     */
    public record Stop(int number, String title, State state) {}

    /** Makes the strip of {@code stops}, in order. */
    public StepStrip(List<Stop> stops) {
        getElement().getClassList().add("step-strip");
        getElement().setAttribute("aria-label", "Steps");
        stops.forEach(stop -> getElement().appendChild(item(stop).getElement()));
    }

    private static ListItem item(Stop stop) {
        Span aloud = new Span(" " + stop.title() + ", " + stop.state().words);
        aloud.addClassName("only-read-aloud");
        ListItem item = new ListItem(new Mark(stop.state().mark), new Span(String.valueOf(stop.number())), aloud);
        item.getElement().setAttribute("data-state", stop.state().name().toLowerCase(java.util.Locale.ROOT));
        if (stop.state() == State.NOW) {
            item.getElement().setAttribute("aria-current", "step");
        }
        return item;
    }
}
