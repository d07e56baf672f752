package brightseam.line;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import java.util.Optional;

/**
 * Why nothing more goes into a bath.
 *
 * @param cause what sort of lock; a bath has at most one of each
 * @param reason in words, where a person gave one
 * @param at since when
 * @param by whose badge
 */
public record BathLock(Cause cause, Optional<String> reason, Moment at, BadgeId by) {

    /** What sort of lock. */
    public enum Cause {
        /** Somebody stopped its use; somebody may allow it again. */
        BY_HAND,
        /** An analysis lay outside the limits; only a good analysis lifts it, by itself. */
        OUT_OF_LIMITS,
        /** Somebody found it bad; it is lifted by hand, once a good analysis came after. */
        FOUND_BAD
    }
}
