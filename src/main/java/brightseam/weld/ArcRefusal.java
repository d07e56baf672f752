package brightseam.weld;

import brightseam.kernel.BadgeId;
import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import java.math.BigDecimal;
import java.util.List;

/** The rules that stand against an arc, besides those of the chamber, the pieces and the person. */
public sealed interface ArcRefusal extends JointRefusal {

    @Override
    default String code() {
        return switch (this) {
            case JointNotPlanned ignored -> "joint-not-planned";
            case NoSessionForJoint ignored -> "joint-no-session";
            case OtherKitInside ignored -> "joint-other-kit-inside";
            case ArcRunning ignored -> "joint-arc-running";
            case WelderBusy ignored -> "joint-welder-busy";
            case OxygenNotKnown ignored -> "joint-oxygen-not-known";
            case OxygenTooHigh ignored -> "joint-oxygen-too-high";
            case MoistureNotKnown ignored -> "joint-moisture-not-known";
            case MoistureTooHigh ignored -> "joint-moisture-too-high";
            case NoArgonConnected ignored -> "joint-no-argon-connected";
            case BackSideNotConfirmed ignored -> "joint-back-side-not-confirmed";
            case BackSideNotKnown ignored -> "joint-back-side-not-known";
            case BackSideTooHigh ignored -> "joint-back-side-too-high";
            case FillerNeeded ignored -> "joint-filler-needed";
            case FillerNotPlanned ignored -> "joint-filler-not-planned";
            case WrongFiller ignored -> "joint-wrong-filler";
            case FillerNotInside ignored -> "joint-filler-not-inside";
            case PiecesNotReleased ignored -> "joint-pieces-not-released";
            case PiecesNotInside ignored -> "joint-pieces-not-inside";
            case NothingToRepair ignored -> "joint-nothing-to-repair";
            case RepairOnly ignored -> "joint-repair-only";
            case RepairsUsedUp ignored -> "joint-repairs-used-up";
            case RepairNotDecided ignored -> "joint-repair-not-decided";
            case JointAccepted ignored -> "joint-accepted";
            case NoArcRunning ignored -> "joint-no-arc-running";
            case EvidenceNotOwed ignored -> "joint-evidence-not-owed";
        };
    }

    /** No issue of the kit's weld map plans it. */
    record JointNotPlanned(JointId joint) implements ArcRefusal {}

    /** No chamber session holds its kit. */
    record NoSessionForJoint(JointId joint, KitId kit) implements ArcRefusal {}

    /** The session holds another kit. */
    record OtherKitInside(JointId joint, SessionId session, KitId kit) implements ArcRefusal {}

    /** An arc runs on it. */
    record ArcRunning(JointId joint, int run, Moment since, String welder) implements ArcRefusal {}

    /** The welder has an arc running on another joint. */
    record WelderBusy(JointId joint, BadgeId welder, JointId other) implements ArcRefusal {}

    /** No oxygen reading counts now. */
    record OxygenNotKnown(JointId joint, String meter, String trouble) implements ArcRefusal {}

    /** There is too much oxygen in the chamber. */
    record OxygenTooHigh(JointId joint, SupplyId meter, BigDecimal oxygenPpm, BigDecimal oxygenPpmMax)
            implements ArcRefusal {}

    /** No moisture reading counts now. */
    record MoistureNotKnown(JointId joint, SupplyId meter, String trouble) implements ArcRefusal {}

    /** There is too much water in the chamber's gas. */
    record MoistureTooHigh(JointId joint, SupplyId meter, BigDecimal moisturePpm, BigDecimal moisturePpmMax)
            implements ArcRefusal {}

    /** The chamber draws on no argon. */
    record NoArgonConnected(JointId joint, SessionId session) implements ArcRefusal {}

    /** The welder has not said that the back side is as the map asks. */
    record BackSideNotConfirmed(JointId joint, BackSide backSide) implements ArcRefusal {}

    /** The meter on the back side says nothing that counts. */
    record BackSideNotKnown(JointId joint, SupplyId meter, String trouble) implements ArcRefusal {}

    /** There is too much oxygen on the back side. */
    record BackSideTooHigh(JointId joint, SupplyId meter, BigDecimal oxygenPpm, BigDecimal oxygenPpmMax)
            implements ArcRefusal {}

    /** The map asks for filler and none was named. */
    record FillerNeeded(JointId joint, String planned) implements ArcRefusal {}

    /** The map asks for none. */
    record FillerNotPlanned(JointId joint, String filler) implements ArcRefusal {}

    /** The filler is of another class than the map asks for. */
    record WrongFiller(JointId joint, String filler, String found, String planned) implements ArcRefusal {}

    /** The filler was not checked into the session. */
    record FillerNotInside(JointId joint, String filler) implements ArcRefusal {}

    /** Pieces have no record. */
    record PiecesNotReleased(JointId joint, List<JointPart> parts) implements ArcRefusal {
        /** Copies the list. */
        public PiecesNotReleased {
            parts = List.copyOf(parts);
        }
    }

    /** Pieces were not passed into the session. */
    record PiecesNotInside(JointId joint, List<TravellerId> travellers) implements ArcRefusal {
        /** Copies the list. */
        public PiecesNotInside {
            travellers = List.copyOf(travellers);
        }
    }

    /** It was not welded yet. */
    record NothingToRepair(JointId joint) implements ArcRefusal {}

    /** It was judged or repaired: whatever follows is a repair. */
    record RepairOnly(JointId joint, ArcPurpose purpose) implements ArcRefusal {}

    /** It was repaired as often as its class admits. */
    record RepairsUsedUp(JointId joint, JointClass jointClass, int repairs) implements ArcRefusal {}

    /** It was rejected and nobody has decided on a repair. */
    record RepairNotDecided(JointId joint) implements ArcRefusal {}

    /** It was accepted as it is. */
    record JointAccepted(JointId joint, String by, Moment at) implements ArcRefusal {}

    /** No arc runs on it. */
    record NoArcRunning(JointId joint) implements ArcRefusal {}

    /** That stretch was looked at already, or has not ended. */
    record EvidenceNotOwed(JointId joint, int run, HotStretch stretch) implements ArcRefusal {}
}
