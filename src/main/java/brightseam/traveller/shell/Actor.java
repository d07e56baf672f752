package brightseam.traveller.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.LabelEntry;
import java.util.Optional;

/**
 * Who acts, and on which tablet.
 *
 * @param label how the label came in that sets this off, where a label does
 */
public record Actor(BadgeId badge, String tablet, Optional<LabelEntry> label) {

    /** Somebody who acts by touch. */
    public Actor(BadgeId badge, String tablet) {
        this(badge, tablet, Optional.empty());
    }

    /** The same person, acting by a label that came in by {@code entry}. */
    public Actor by(LabelEntry entry) {
        return new Actor(badge, tablet, Optional.of(entry));
    }
}
