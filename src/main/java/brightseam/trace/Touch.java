package brightseam.trace;

import brightseam.kernel.JointId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One thing in contact with the pieces of one traveller, from when until when.
 *
 * @param traveller which traveller the pieces are, or ended, under; nobody else's contact names the same pieces
 * @param recordedAs the label that they went under at the time, where they were set apart later
 * @param pieces numbers of the pieces, ascending: those in the lot at the beginning, without those set apart since
 * @param thing what touched them
 * @param type which of its sort, such as {@code white-cotton}; empty where a label says all
 * @param step at which step; empty for what goes with no step
 * @param pass in which passage of that step, from 1; 0 where there is no step
 * @param joint at which joint of the weld map, where it was at one
 * @param from wall time
 * @param until wall time, never before {@code from} even where the clock was set back; empty while it lasts
 */
public record Touch(TravellerId traveller, TravellerId recordedAs, List<Integer> pieces, Thing thing, String type,
        Optional<StepId> step, int pass, Optional<JointId> joint, Instant from, Optional<Instant> until) {

    /** Copies the pieces. */
    public Touch {
        pieces = List.copyOf(pieces);
    }

    /** The same, lasting until {@code at} at least. */
    Touch lasting(Instant at) {
        Instant known = until.orElse(from);
        return new Touch(traveller, recordedAs, pieces, thing, type, step, pass, joint, from,
                Optional.of(at.isBefore(known) ? known : at));
    }

    /** The same at {@code where}, for {@code some} of the pieces. */
    Touch at(JointId where, List<Integer> some) {
        return new Touch(traveller, recordedAs, pieces.stream().filter(some::contains).toList(), thing, type, step,
                pass, Optional.of(where), from, until);
    }

    /** Whether it is the same contact as {@code other}, begun at another time. */
    boolean isLike(Touch other) {
        return thing.equals(other.thing) && step.equals(other.step) && pass == other.pass && joint.equals(other.joint);
    }

    Touch under(TravellerId other, List<Integer> some) {
        return new Touch(other, recordedAs, pieces.stream().filter(some::contains).toList(), thing, type, step, pass,
                joint, from, until);
    }

    Touch without(List<Integer> gone) {
        return new Touch(traveller, recordedAs, pieces.stream().filter(piece -> !gone.contains(piece)).toList(), thing,
                type, step, pass, joint, from, until);
    }

    /** Whether it is contact at {@code step} in passage {@code pass}. */
    boolean isAt(StepId at, int passage) {
        return pass == passage && step.filter(at::equals).isPresent();
    }
}
