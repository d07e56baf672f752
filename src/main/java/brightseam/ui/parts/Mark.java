package brightseam.ui.parts;

import com.vaadin.flow.component.Tag;

/** One of the shop's marks, told apart by outline alone. Hidden from screen readers: the word beside it speaks. */
@Tag("shop-mark")
public final class Mark extends Part {

    /** What a mark says; the name in the page is the same in lower case with hyphens. */
    public enum Kind {
        /** Done, accepted, in order: a disc with a tick. */
        SIGNED,
        /** Refused, not in order: a diamond with a cross. */
        REFUSED,
        /** This one now: an arrow head. */
        NOW,
        /** Still to come: an empty square. */
        TO_COME,
        /** Superseded by rework: a circling arrow. */
        SUPERSEDED,
        /** Stopped: a square with a bar. */
        STOPPED,
        /** Waits for an inspector's stamp: a stamp. */
        STAMP,
        /** A caution: an open triangle. */
        CAUTION,
        /** Hot, has to stay where it is: an hourglass. */
        COOLING,
        /** Done and not looked at yet: a ring half filled. */
        HALF,
        /** Scanning: corner marks round bars. */
        SCAN;

        String inPage() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /** Makes the mark {@code kind}. */
    public Mark(Kind kind) {
        super("marks.js");
        say("kind", kind.inPage());
    }
}
