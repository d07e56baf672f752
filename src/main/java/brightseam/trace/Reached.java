package brightseam.trace;

import java.time.Instant;
import java.util.Optional;

/**
 * One traveller that a thing touched.
 *
 * @param now where its pieces are now
 * @param contacts how many times the thing was in contact with them in the time asked for
 * @param pieces how many pieces it touched, those that were scrapped since included
 * @param from when the first contact began
 * @param until when the last one ended; empty while one lasts
 */
public record Reached(Whereabouts now, int contacts, int pieces, Instant from, Optional<Instant> until) {

    /** Both taken together; of the same traveller. */
    public Reached with(Reached other) {
        return new Reached(now, contacts + other.contacts, Math.max(pieces, other.pieces),
                from.isBefore(other.from) ? from : other.from,
                until.flatMap(mine -> other.until.map(theirs -> mine.isAfter(theirs) ? mine : theirs)));
    }

    /** The same, touching {@code many} pieces. */
    public Reached touching(int many) {
        return new Reached(now, contacts, many, from, until);
    }
}
