package brightseam.traveller;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import brightseam.procedure.ProcedureRef;
import brightseam.procedure.WindowLimits;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What happened to a traveller. Events carry what they lead to (the window's limits, the steps that a return
 * supersedes), so that folding them needs no procedure.
 */
public sealed interface TravellerEvent {

    /** When, by whom, on which tablet. */
    Origin origin();

    /** The traveller exists: {@code pieces} identical pieces of one heat, on one revision, along {@code route}. */
    record Released(Origin origin, TravellerId traveller, KitId kit, PartIdentity part, List<Integer> pieces,
            HeatId heat, ProcedureRef procedure, List<StepId> route) implements TravellerEvent {}

    /**
     * The traveller exists because pieces were set apart from {@code parent}; {@code history} is the parent's record
     * up to then, so that this record stands by itself.
     *
     * @param parentVersion the parent's version that the history ends at
     */
    record SetApart(Origin origin, TravellerId traveller, TravellerId parent, long parentVersion, List<Integer> pieces,
            String reason, Signature signature, List<TravellerEvent> history) implements TravellerEvent {}

    /** Pieces left this lot and go on as {@code child}, with the nonconformances that are theirs alone. */
    record PiecesSetApart(Origin origin, TravellerId child, List<Integer> pieces, String reason, Signature signature)
            implements TravellerEvent {}

    /** The pieces lie in a bin. */
    record PutInBin(Origin origin, BinId bin, BinClass binClass, boolean closed) implements TravellerEvent {}

    /** Their bin was closed or their bag sealed. */
    record BinClosed(Origin origin, BinId bin) implements TravellerEvent {}

    /** Their bin or bag was opened. */
    record BinOpened(Origin origin, BinId bin) implements TravellerEvent {}

    /** A step was begun: cautions read, gloves on, at the station. */
    record StepStarted(Origin origin, StepId step, Optional<StationId> station, boolean cautionsRead,
            Optional<String> gloves, List<TravellerId> loadWith) implements TravellerEvent {}

    /** The step that was just started had been done before, at a time that nobody but the signer knows. */
    record StepEnteredLate(Origin origin, StepId step, Instant doneAt, String reason, Signature signature)
            implements TravellerEvent {}

    /** What touched the pieces at a step, as scanned or as the shop's registers have it. */
    record ContactMade(Origin origin, StepId step, List<Contact> contacts) implements TravellerEvent {}

    /** The step's hold began. */
    record HoldBegun(Origin origin, StepId step) implements TravellerEvent {}

    /** The step's hold ended: lifted out, dry, stopped. */
    record HoldEnded(Origin origin, StepId step) implements TravellerEvent {}

    /** A value was read off; what is outside its limits is kept like the rest. */
    record ReadingTaken(Origin origin, StepId step, String reading, BigDecimal value, boolean inLimits)
            implements TravellerEvent {}

    /** An entry was wrong: the old value stays and is shown struck through. */
    record ReadingCorrected(Origin origin, StepId step, String reading, BigDecimal from, BigDecimal to,
            boolean inLimits, String reason, Signature signature) implements TravellerEvent {}

    /** A person signed the step for every piece, together with the rest of the load. */
    record StepSigned(Origin origin, StepId step, Signature signature, List<TravellerId> loadWith)
            implements TravellerEvent {}

    /** An inspector stamped the inspection point. */
    record StepStamped(Origin origin, StepId step, Signature signature, String remark) implements TravellerEvent {}

    /** The clean window runs from now on. */
    record WindowOpened(Origin origin, WindowLimits limits) implements TravellerEvent {}

    /** The clean window ended. */
    record WindowEnded(Origin origin, WindowEnd why) implements TravellerEvent {}

    /** Something other than clean gloves touched the pieces. */
    record TouchReported(Origin origin, String what) implements TravellerEvent {}

    /** The gloves touched something else, the pieces were not touched with them since: new ones come on. */
    record GlovesSpent(Origin origin, String what) implements TravellerEvent {}

    /** A limit was broken or something found wanting: quarantine. */
    record NonconformanceOpened(Origin origin, int number, Nonconformance.Cause cause, StepId step, int pass,
            List<Integer> pieces, String text, Optional<Signature> signature) implements TravellerEvent {}

    /** Somebody entitled decided what becomes of it. */
    record Dispositioned(Origin origin, int number, Disposition disposition, String reason, Signature signature)
            implements TravellerEvent {}

    /** Back to {@code step}; what was done from there on is superseded and stays in the record. */
    record ReturnedToStep(Origin origin, StepId step, String reason, List<StepId> superseded)
            implements TravellerEvent {}

    /** Pieces left the lot as scrap. */
    record PiecesScrapped(Origin origin, List<Integer> pieces) implements TravellerEvent {}

    /** Through the transfer lock into the chamber. */
    record PassedIn(Origin origin) implements TravellerEvent {}

    /** They were taken out of their bin and into the chamber, in a session and on the way that it says. */
    record EnteredChamber(Origin origin, SessionId session, StationId station, String way)
            implements TravellerEvent {}

    /** They went through the transfer lock, one way or the other. */
    record LockPassed(Origin origin, LockPassFact lock) implements TravellerEvent {}

    /** An arc began at a joint that some of the pieces are part of; {@code pass} is that of the weld step. */
    record ArcBegun(Origin origin, StepId step, int pass, ArcFact arc) implements TravellerEvent {}

    /** A joint's run is over, with what the meters proved of it. */
    record JointWelded(Origin origin, StepId step, int pass, JointFact joint) implements TravellerEvent {}

    /** An inspector judged a joint. */
    record JointJudged(Origin origin, StepId step, JudgedFact verdict, Signature signature)
            implements TravellerEvent {}

    /** Nothing is left to do. */
    record Closed(Origin origin) implements TravellerEvent {}

    /** Somebody tried something that a rule refuses: which command, which rules, on what evidence. */
    record AttemptRefused(Origin origin, String attempt, List<BrokenRule> rules) implements TravellerEvent {

        /** A rule's stable name with its evidence. */
        public record BrokenRule(String code, Map<String, String> evidence) {}
    }

    /** The mark that it carries, where a person signed it. */
    default Optional<Signature> mark() {
        return switch (this) {
            case SetApart e -> Optional.of(e.signature());
            case PiecesSetApart e -> Optional.of(e.signature());
            case ReadingCorrected e -> Optional.of(e.signature());
            case StepEnteredLate e -> Optional.of(e.signature());
            case StepSigned e -> Optional.of(e.signature());
            case StepStamped e -> Optional.of(e.signature());
            case NonconformanceOpened e -> e.signature();
            case Dispositioned e -> Optional.of(e.signature());
            case JointJudged e -> Optional.of(e.signature());
            case Released e -> Optional.empty();
            case PutInBin e -> Optional.empty();
            case BinClosed e -> Optional.empty();
            case BinOpened e -> Optional.empty();
            case StepStarted e -> Optional.empty();
            case ContactMade e -> Optional.empty();
            case HoldBegun e -> Optional.empty();
            case HoldEnded e -> Optional.empty();
            case ReadingTaken e -> Optional.empty();
            case WindowOpened e -> Optional.empty();
            case WindowEnded e -> Optional.empty();
            case TouchReported e -> Optional.empty();
            case GlovesSpent e -> Optional.empty();
            case ReturnedToStep e -> Optional.empty();
            case PiecesScrapped e -> Optional.empty();
            case PassedIn e -> Optional.empty();
            case EnteredChamber e -> Optional.empty();
            case LockPassed e -> Optional.empty();
            case ArcBegun e -> Optional.empty();
            case JointWelded e -> Optional.empty();
            case Closed e -> Optional.empty();
            case AttemptRefused e -> Optional.empty();
        };
    }

    /** When it happened. */
    default Moment at() {
        return origin().at();
    }

    /** Whose badge. */
    default BadgeId by() {
        return origin().by();
    }
}
