package brightseam.traveller;

import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.people.Signer;
import brightseam.procedure.BinClass;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What a person, or the server's watch, asks of a traveller; carries the facts that the decision needs. */
public sealed interface TravellerCommand {

    /** When, by whom, on which tablet. */
    Origin origin();

    /** A bin as its own record has it. */
    record BinFact(BinId id, BinClass binClass, boolean closed) {}

    /** A station as the shop's register has it. */
    record StationFact(StationId id, String stationClass, boolean outOfUse) {}

    /** A heat as the shop's register has it. */
    record HeatFact(HeatId id, String grade, boolean onHold) {}

    /** Make a lot of {@code quantity} identical pieces. */
    record Release(Origin origin, TravellerId traveller, KitId kit, PartIdentity part, int quantity, HeatFact heat)
            implements TravellerCommand {}

    /** Put the pieces into a bin. */
    record PutInBin(Origin origin, BinFact bin) implements TravellerCommand {}

    /** Close the bin or seal the bag that they are in. */
    record CloseBin(Origin origin) implements TravellerCommand {}

    /** Open the bin or bag that they are in. */
    record OpenBin(Origin origin) implements TravellerCommand {}

    /**
     * Begin a step at a station.
     *
     * @param touching what touches the pieces there: scanned by the person, or as the shop's registers have it
     * @param objections what stands against this person doing this step there, by the rules of people, baths, supplies
     */
    record StartStep(Origin origin, StepId step, Optional<StationFact> station, boolean cautionsRead, boolean glovesOn,
            List<TravellerId> loadWith, List<Contact> touching, List<Refusal> objections)
            implements TravellerCommand {}

    /**
     * Say that a step was done earlier, when nobody could write it down: what {@code start} says of it, and the time
     * as the signer states it.
     */
    record EnterLate(StartStep start, Instant doneAt, String reason, Signer signer) implements TravellerCommand {

        @Override
        public Origin origin() {
            return start.origin();
        }
    }

    /** Begin the step's hold, where readings come first. */
    record BeginHold(Origin origin, StepId step) implements TravellerCommand {}

    /** End the step's hold. */
    record EndHold(Origin origin, StepId step) implements TravellerCommand {}

    /** Take the pieces out before the hold's minimum, because something worse would happen: quarantine. */
    record CutHoldShort(Origin origin, StepId step, String reason) implements TravellerCommand {}

    /** Write down a value. */
    record TakeReading(Origin origin, StepId step, String reading, BigDecimal value) implements TravellerCommand {}

    /** Correct a value that was written down wrongly. */
    record CorrectReading(Origin origin, StepId step, String reading, BigDecimal value, String reason, Signer signer)
            implements TravellerCommand {}

    /** Sign a step. */
    record SignStep(Origin origin, StepId step, Signer signer, List<TravellerId> loadWith, List<Refusal> objections)
            implements TravellerCommand {}

    /** Stamp an inspection point. */
    record StampStep(Origin origin, StepId step, Signer signer, String remark, List<Refusal> objections)
            implements TravellerCommand {}

    /** Reject at an inspection point. */
    record RejectStep(Origin origin, StepId step, Signer signer, List<Integer> pieces, String reason,
            List<Refusal> objections) implements TravellerCommand {}

    /** Say that something other than clean gloves touched the pieces. */
    record ReportTouch(Origin origin, String what) implements TravellerCommand {}

    /** Say that the gloves touched something else, and that they have not touched the pieces since. */
    record ReportGlovesSpent(Origin origin, String what) implements TravellerCommand {}

    /** Put on new gloves in the middle of a step; {@code objections} by the rules of supplies. */
    record ChangeGloves(Origin origin, Contact gloves, List<Refusal> objections) implements TravellerCommand {}

    /** Say that something is wrong with some of the pieces. */
    record ReportNonconformance(Origin origin, List<Integer> pieces, String text) implements TravellerCommand {}

    /**
     * Say that something that touched the pieces has proved bad, or may have: quarantine, even after the last stamp.
     *
     * @param step where it touched them; empty where it was at no step, such as their heat
     */
    record MarkSuspect(Origin origin, Optional<StepId> step, String reason, Signer signer)
            implements TravellerCommand {}

    /** Decide what becomes of a nonconformance; {@code returnTo} goes with rework alone. */
    record Decide(Origin origin, int number, Disposition disposition, Optional<StepId> returnTo, String reason,
            Signer signer) implements TravellerCommand {}

    /** Set pieces apart as a traveller of their own. */
    record SetApart(Origin origin, TravellerId child, List<Integer> pieces, String reason, Signer signer)
            implements TravellerCommand {}

    /**
     * Take pieces out of their load, because something is or may be wrong with them: out of the bath at that moment,
     * if they are in one, and into another bin, with an open nonconformance. Some pieces of a lot become the traveller
     * {@code child}; where they are the whole lot, it is taken out itself.
     */
    record TakeOut(Origin origin, TravellerId child, List<Integer> pieces, String reason, BinFact bin, Signer signer)
            implements TravellerCommand {}

    /** What a chamber session, or the weld map, asks of a traveller. */
    sealed interface OfChamber extends TravellerCommand {}

    /**
     * Pass the pieces into the chamber in a session: its pass-in step is begun and signed at once.
     *
     * @param station the lock, or the chamber that stood open
     * @param way how they go in, such as {@code lock pass 3}
     * @param touching what touches the pieces on the way, by scan
     * @param objections what stands against it by the rules of people, supplies and the session
     */
    record EnterChamber(Origin origin, SessionId session, StationId station, String way, List<Contact> touching,
            Signer signer, List<TravellerId> loadWith, List<Refusal> objections) implements OfChamber {}

    /** Let the arc of a joint begin that pieces of this traveller are part of. */
    record BeginArc(Origin origin, ArcFact arc) implements OfChamber {}

    /** Write down what the meters proved of a joint's run. Never refused: what was hot was hot. */
    record NoteJoint(Origin origin, JointFact joint) implements OfChamber {}

    /** Write down what an inspector saw at a joint. */
    record JudgeJoint(Origin origin, JudgedFact verdict, Signer signer) implements OfChamber {}

    /** Write down that the pieces went through the lock. Never refused: they are on the other side. */
    record NoteLockPass(Origin origin, LockPassFact pass) implements OfChamber {}

    /** Sign the weld step at the session's end; {@code objections} by the rules of people and of the weld map. */
    record SignWelding(Origin origin, Signer signer, List<TravellerId> loadWith, List<Refusal> objections)
            implements OfChamber {}

    /** Let the server note what time alone has brought about. */
    record Watch(Origin origin) implements TravellerCommand {}

    /** Keep in the record that an attempt was refused. */
    record NoteRefusal(Origin origin, String attempt, List<Refusal> refusals) implements TravellerCommand {}
}
