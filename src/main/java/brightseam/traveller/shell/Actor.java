package brightseam.traveller.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.LabelEntry;
import brightseam.kernel.TravellerId;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Who acts, and on which tablet.
 *
 * @param label how the label came in that sets this off, where a label does
 * @param seen what the person had before their eyes, by traveller: the SHA-256 of its content as it was shown
 */
public record Actor(BadgeId badge, String tablet, Optional<LabelEntry> label, Map<TravellerId, String> seen) {

    /** Copies the map. */
    public Actor {
        seen = Map.copyOf(seen);
    }

    /** Somebody who acts by touch. */
    public Actor(BadgeId badge, String tablet) {
        this(badge, tablet, Optional.empty(), Map.of());
    }

    /** The same person, acting by a label that came in by {@code entry}. */
    public Actor by(LabelEntry entry) {
        return new Actor(badge, tablet, Optional.of(entry), seen);
    }

    /** The same person with {@code cards} before their eyes: a signature is refused where they say something else. */
    public Actor seeing(Collection<Card> cards) {
        return new Actor(badge, tablet, label, cards.stream().collect(Collectors.toMap(Card::id, Card::content)));
    }
}
