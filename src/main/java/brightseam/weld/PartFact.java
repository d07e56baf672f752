package brightseam.weld;

import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import java.util.List;
import java.util.Optional;

/**
 * One piece of a joint as it is at this moment.
 *
 * @param part which piece of the kit
 * @param traveller whose record it is in; empty where none was released
 * @param inside whether it was passed into the session
 * @param against what its own record has against an arc: a window that is over, a quarantine
 */
public record PartFact(JointPart part, Optional<TravellerId> traveller, boolean inside, List<Refusal> against) {

    /** Copies the list. */
    public PartFact {
        against = List.copyOf(against);
    }
}
