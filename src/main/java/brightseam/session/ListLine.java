package brightseam.session;

import java.util.List;
import java.util.Optional;

/**
 * One line of the list as it stands.
 *
 * @param need what is needed
 * @param there labels of what meets it: checked in, in the lock, inside or passed out
 * @param leftOut the lead's word that it may stay out, where it was given
 */
public record ListLine(Need need, List<String> there, Optional<LeftOut> leftOut) {

    /** Copies the list. */
    public ListLine {
        there = List.copyOf(there);
    }

    /** How many are missing, whether they may stay out or not. */
    public int missing() {
        return Math.max(0, need.count() - there.size());
    }

    /** Whether nothing is missing, or what is may stay out. */
    public boolean isMet() {
        return missing() == 0 || leftOut.isPresent();
    }
}
