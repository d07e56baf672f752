package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import java.time.Instant;
import java.util.Optional;

/**
 * One tablet as the server remembers it, across restarts and page reloads.
 *
 * @param label such as {@code TAB-K7Q2}
 * @param badge who signed in last and did not sign out; may be idle by now, see {@link Tablets#present}
 * @param signedInAt since when, in real time
 * @param activeAt the last time that somebody touched it, in real time
 * @param openCard the label of the traveller or bin whose card is open on it
 */
public record Tablet(
        String label,
        Optional<BadgeId> badge,
        Optional<Instant> signedInAt,
        Optional<Instant> activeAt,
        Optional<String> openCard) {}
