package brightseam.traveller;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.ContactKind;
import brightseam.kernel.HeatId;
import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.people.Role;
import brightseam.procedure.BinClass;
import brightseam.procedure.SignedBy;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Every rule that a traveller's command can break. */
public sealed interface TravellerRefusal extends Refusal {

    /** The label is taken. */
    record AlreadyReleased(TravellerId traveller) implements TravellerRefusal {
        @Override public String code() { return "already-released"; }
    }

    /** A quantity outside 1 to 999. */
    record QuantityOutOfRange(int quantity) implements TravellerRefusal {
        @Override public String code() { return "quantity-out-of-range"; }
    }

    /** The heat may not be used now. */
    record HeatOnHold(HeatId heat) implements TravellerRefusal {
        @Override public String code() { return "heat-on-hold"; }
    }

    /** The procedure is not for this grade. */
    record GradeNotAllowed(HeatId heat, String grade, List<String> allowed) implements TravellerRefusal {
        @Override public String code() { return "grade-not-allowed"; }
    }

    /** The traveller has ended. */
    record TravellerEnded(TravellerId traveller, Phase phase) implements TravellerRefusal {
        @Override public String code() { return "traveller-ended"; }
    }

    /** Open nonconformances stop it. */
    record InQuarantine(TravellerId traveller, List<Integer> open) implements TravellerRefusal {
        @Override public String code() { return "in-quarantine"; }
    }

    /** Another step comes first. */
    record NotThisStepYet(StepId step, StepId next) implements TravellerRefusal {
        @Override public String code() { return "not-this-step-yet"; }
    }

    /** Somebody has begun it. */
    record AlreadyStarted(StepId step, BadgeId by, Moment at) implements TravellerRefusal {
        @Override public String code() { return "already-started"; }
    }

    /** It has not been begun. */
    record NotStarted(StepId step) implements TravellerRefusal {
        @Override public String code() { return "not-started"; }
    }

    /** Somebody was first. */
    record AlreadySigned(StepId step, String by, Moment at) implements TravellerRefusal {
        @Override public String code() { return "already-signed"; }
    }

    /** The procedure has no such step. */
    record UnknownStep(StepId step) implements TravellerRefusal {
        @Override public String code() { return "unknown-step"; }
    }

    /** The step is done in a chamber session, not at the bench. */
    record ContinuesInSession(StepId step) implements TravellerRefusal {
        @Override public String code() { return "continues-in-session"; }
    }

    /** By this procedure the pieces are passed in at the bench, and no session writes that down. */
    record PassesInAtTheBench(StepId step, String procedure) implements TravellerRefusal {
        @Override public String code() { return "passes-in-at-the-bench"; }
    }

    /** This procedure ends without welding. */
    record NotWeldedByProcedure(TravellerId traveller, String procedure) implements TravellerRefusal {
        @Override public String code() { return "not-welded-by-procedure"; }
    }

    /** The pieces were passed in in another session, and that chamber has been opened since. */
    record NotInThatSession(TravellerId traveller, SessionId session) implements TravellerRefusal {
        @Override public String code() { return "not-in-that-session"; }
    }

    /** The clean window is over, and no new joint begins on what is not clean any more. */
    record WindowOverInside(TravellerId traveller, JointId joint) implements TravellerRefusal {
        @Override public String code() { return "window-over-inside"; }
    }

    /** An arc burns, as far as anybody has said. */
    record ArcStillBurning(JointId joint, Moment since) implements TravellerRefusal {
        @Override public String code() { return "arc-still-burning"; }
    }

    /** No station was scanned. */
    record NoStation(StepId step, String expected) implements TravellerRefusal {
        @Override public String code() { return "no-station"; }
    }

    /** The station is of another class. */
    record WrongStation(StepId step, String expected, StationId found, String foundClass) implements TravellerRefusal {
        @Override public String code() { return "wrong-station"; }
    }

    /** The station may not be used now. */
    record StationOutOfUse(StationId station) implements TravellerRefusal {
        @Override public String code() { return "station-out-of-use"; }
    }

    /** The pieces are in no bin that the record knows. */
    record InNoBin(List<BinClass> allowed) implements TravellerRefusal {
        @Override public String code() { return "in-no-bin"; }
    }

    /** A bin of the wrong class. */
    record WrongBinClass(BinId bin, BinClass binClass, List<BinClass> allowed) implements TravellerRefusal {
        @Override public String code() { return "wrong-bin-class"; }
    }

    /** They lie in it already. */
    record AlreadyInThatBin(BinId bin) implements TravellerRefusal {
        @Override public String code() { return "already-in-that-bin"; }
    }

    /** The bin or bag has to be closed for this. */
    record BinNotClosed(BinId bin, BinClass binClass) implements TravellerRefusal {
        @Override public String code() { return "bin-not-closed"; }
    }

    /** It is closed. */
    record BinIsClosed(BinId bin) implements TravellerRefusal {
        @Override public String code() { return "bin-is-closed"; }
    }

    /** It is not closed. */
    record BinIsOpen(BinId bin) implements TravellerRefusal {
        @Override public String code() { return "bin-is-open"; }
    }

    /** The cautions were not confirmed. */
    record CautionsNotRead(StepId step) implements TravellerRefusal {
        @Override public String code() { return "cautions-not-read"; }
    }

    /** The gloves were not confirmed. */
    record GlovesNotOn(StepId step, String gloves) implements TravellerRefusal {
        @Override public String code() { return "gloves-not-on"; }
    }

    /** Something that touches the pieces at the step was not scanned. */
    record ContactNotScanned(StepId step, ContactKind kind, String type) implements TravellerRefusal {
        @Override public String code() { return "contact-not-scanned"; }
    }

    /** No cleaned pieces are being handled, so no gloves have to be changed. */
    record NoCleanGlovesOn(TravellerId traveller) implements TravellerRefusal {
        @Override public String code() { return "no-clean-gloves-on"; }
    }

    /** The step has no hold. */
    record NoHold(StepId step) implements TravellerRefusal {
        @Override public String code() { return "no-hold"; }
    }

    /** The hold has begun. */
    record HoldAlreadyBegun(StepId step, Moment at) implements TravellerRefusal {
        @Override public String code() { return "hold-already-begun"; }
    }

    /** The hold has not begun. */
    record HoldNotBegun(StepId step) implements TravellerRefusal {
        @Override public String code() { return "hold-not-begun"; }
    }

    /** The hold has ended. */
    record HoldAlreadyEnded(StepId step, Moment at) implements TravellerRefusal {
        @Override public String code() { return "hold-already-ended"; }
    }

    /** Too early. */
    record HoldNotElapsed(StepId step, Moment begunAt, Moment earliestEnd, Moment attemptedAt)
            implements TravellerRefusal {
        @Override public String code() { return "hold-not-elapsed"; }
    }

    /** The minimum is over, so nothing is cut short. */
    record HoldLongEnough(StepId step, Moment earliestEnd) implements TravellerRefusal {
        @Override public String code() { return "hold-long-enough"; }
    }

    /** A hold that was cut short is done again, or its pieces are scrapped; nobody can waive it. */
    record HoldCannotBeWaived(StepId step) implements TravellerRefusal {
        @Override public String code() { return "hold-cannot-be-waived"; }
    }

    /** It still runs. */
    record HoldStillRunning(StepId step) implements TravellerRefusal {
        @Override public String code() { return "hold-still-running"; }
    }

    /** A reading is missing. */
    record ReadingMissing(StepId step, String reading) implements TravellerRefusal {
        @Override public String code() { return "reading-missing"; }
    }

    /** A reading that comes before the hold is outside its limits. */
    record NotFitToBegin(StepId step, String reading, BigDecimal value) implements TravellerRefusal {
        @Override public String code() { return "not-fit-to-begin"; }
    }

    /** The step has no such reading. */
    record UnknownReading(StepId step, String reading) implements TravellerRefusal {
        @Override public String code() { return "unknown-reading"; }
    }

    /** It was taken; a wrong entry is corrected, not taken again. */
    record ReadingAlreadyTaken(StepId step, String reading, BigDecimal value) implements TravellerRefusal {
        @Override public String code() { return "reading-already-taken"; }
    }

    /** More decimals than the reading has, or a look that is neither 1 nor 0. */
    record ReadingMalformed(StepId step, String reading, BigDecimal value, int decimals) implements TravellerRefusal {
        @Override public String code() { return "reading-malformed"; }
    }

    /** The correction changes nothing. */
    record NothingToCorrect(StepId step, String reading) implements TravellerRefusal {
        @Override public String code() { return "nothing-to-correct"; }
    }

    /** The step is signed by somebody else's role. */
    record SignedByAnother(StepId step, SignedBy expected) implements TravellerRefusal {
        @Override public String code() { return "signed-by-another-role"; }
    }

    /** The role is missing. */
    record RoleMissing(BadgeId badge, List<Role> anyOf) implements TravellerRefusal {
        @Override public String code() { return "role-missing"; }
    }

    /** No stamp has been issued to this person. */
    record NoStamp(BadgeId badge) implements TravellerRefusal {
        @Override public String code() { return "no-stamp"; }
    }

    /** Who did the work does not inspect it (independent inspection, common practice). */
    record InspectsOwnWork(BadgeId badge, StepId step) implements TravellerRefusal {
        @Override public String code() { return "inspects-own-work"; }
    }

    /** No clean window is open. */
    record WindowNotOpen(StepId step) implements TravellerRefusal {
        @Override public String code() { return "window-not-open"; }
    }

    /** Less is left of the clean window than passing in needs. */
    record WindowTooShort(Duration left, Duration needed) implements TravellerRefusal {
        @Override public String code() { return "window-too-short"; }
    }

    /** No clean window is open that a touch could end. */
    record NothingToTouch(TravellerId traveller) implements TravellerRefusal {
        @Override public String code() { return "nothing-to-touch"; }
    }

    /** No such nonconformance is open. */
    record NotOpen(int number) implements TravellerRefusal {
        @Override public String code() { return "nonconformance-not-open"; }
    }

    /** Rework needs a step to return to, out of those that the procedure allows; nothing else takes one. */
    record ReturnNotAllowed(List<StepId> allowed) implements TravellerRefusal {
        @Override public String code() { return "return-not-allowed"; }
    }

    /** Pieces that this lot does not have, or none. */
    record NoSuchPieces(List<Integer> asked, List<Integer> present) implements TravellerRefusal {
        @Override public String code() { return "no-such-pieces"; }
    }

    /** Setting every piece apart would leave an empty lot. */
    record NothingWouldRemain(List<Integer> asked) implements TravellerRefusal {
        @Override public String code() { return "nothing-would-remain"; }
    }

    /** A reason is asked for. */
    record ReasonMissing() implements TravellerRefusal {
        @Override public String code() { return "reason-missing"; }
    }

    /** A hold that nobody observed is not entered afterwards. */
    record LateHold(StepId step) implements TravellerRefusal {
        @Override
        public String code() {
            return "late-hold";
        }
    }

    /** An inspector stamps what they see now. */
    record LateInspection(StepId step) implements TravellerRefusal {
        @Override
        public String code() {
            return "late-inspection";
        }
    }

    /** The clean window begins with this step, and would seem to begin later than it did. */
    record LateWindow(StepId step) implements TravellerRefusal {
        @Override
        public String code() {
            return "late-window";
        }
    }

    /** The time that is stated has not come yet. */
    record LateInFuture(StepId step, Instant doneAt, Moment now) implements TravellerRefusal {
        @Override
        public String code() {
            return "late-in-future";
        }
    }

    /** The time that is stated lies before {@code earliest}, when the step before was done or the lot released. */
    record LateBeforePrevious(StepId step, Instant doneAt, Instant earliest) implements TravellerRefusal {
        @Override
        public String code() {
            return "late-before-previous";
        }
    }
}
