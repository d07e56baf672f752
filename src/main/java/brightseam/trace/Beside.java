package brightseam.trace;

import java.time.Instant;
import java.util.Optional;

/**
 * Another traveller that the same thing touched in the same time.
 *
 * @param own the contact of the pieces that were asked about
 * @param now where the other's pieces are now
 * @param from when the thing's contact with the other began
 * @param until when it ended; empty while it lasts
 */
public record Beside(Touch own, Whereabouts now, Instant from, Optional<Instant> until) {}
