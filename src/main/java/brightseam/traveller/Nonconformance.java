package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import java.util.List;
import java.util.Optional;

/**
 * Something that broke a limit or was found wanting; open until it is dispositioned, or until the pieces are set apart
 * and take it with them: then it stays here under its number without pieces.
 *
 * @param number from 1 in its traveller
 * @param cause what sort
 * @param step where it arose
 * @param pass in which passage of that step
 * @param pieces which pieces of this lot, ascending; empty where it concerns only pieces of another lot
 * @param text what was found, in words or figures
 * @param openedAt when
 * @param decision what was decided, where it was
 */
public record Nonconformance(
        int number,
        Cause cause,
        StepId step,
        int pass,
        List<Integer> pieces,
        String text,
        Moment openedAt,
        Optional<Decided> decision) {

    /** What sort of nonconformance. */
    public enum Cause {
        /** A hold lasted longer than its maximum. */
        HOLD_OVERRUN,
        /** The pieces were taken out before the hold's minimum. Only rework or scrap answers that. */
        HOLD_CUT_SHORT,
        /** The next step began later than the gap allows. */
        GAP_EXCEEDED,
        /** The step was entered late, and a time that is limited was not observed. */
        TIME_NOT_OBSERVED,
        /** A reading lay outside its limits. */
        READING_OUT_OF_LIMITS,
        /** An inspector rejected. */
        INSPECTION_REJECTED,
        /** A person reported it. */
        REPORTED,
        /** Something that touched the pieces proved bad later, or may have been. */
        SUSPECT,
        /** The oxygen was above its limit while a joint was hot. */
        JOINT_EXCURSION,
        /** Nobody can say what the oxygen was while a joint was hot. */
        JOINT_UNPROVEN,
        /** An inspector rejected a joint. */
        JOINT_REJECTED;

        /** Whether it is about a joint, which can be welded again. */
        public boolean isAboutAJoint() {
            return this == JOINT_EXCURSION || this == JOINT_UNPROVEN || this == JOINT_REJECTED;
        }
    }

    /** A disposition as decided. */
    public record Decided(Disposition disposition, String reason, Moment at, Signature signature) {}

    /** Whether nobody has decided yet, while it still has pieces in this lot. */
    public boolean isOpen() {
        return decision.isEmpty() && !pieces.isEmpty();
    }

    Nonconformance decided(Decided how) {
        return new Nonconformance(number, cause, step, pass, pieces, text, openedAt, Optional.of(how));
    }

    Nonconformance withPieces(List<Integer> remaining) {
        return new Nonconformance(number, cause, step, pass, remaining, text, openedAt, decision);
    }
}
