package brightseam.line;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.people.Role;
import java.math.BigDecimal;
import java.util.List;

/** The rules that stand against a {@link BathCommand}, and against taking a load into a bath. */
public sealed interface BathRefusal extends Refusal {

    @Override
    default String code() {
        return switch (this) {
            case BathUnknown ignored -> "bath-unknown";
            case BathAlreadyRegistered ignored -> "bath-already-registered";
            case BathRoleMissing ignored -> "bath-role-missing";
            case BathLocked ignored -> "bath-locked";
            case BathLockedByAnalysis ignored -> "bath-locked-by-analysis";
            case BathBelowLimit ignored -> "bath-below-limit";
            case BathAboveLimit ignored -> "bath-above-limit";
            case BathNeverAnalysed ignored -> "bath-never-analysed";
            case BathStrengthened ignored -> "bath-strengthened";
            case BathAnalysisOverdue ignored -> "bath-analysis-overdue";
            case BathLoadsUsedUp ignored -> "bath-loads-used-up";
            case BathAreaUsedUp ignored -> "bath-area-used-up";
            case TankOccupied ignored -> "tank-occupied";
            case SampleNumberTaken ignored -> "sample-number-taken";
            case SampleOutOfOrder ignored -> "sample-out-of-order";
            case SampleInTheFuture ignored -> "sample-in-the-future";
            case AnalysisIncomplete ignored -> "analysis-incomplete";
            case BathNotLocked ignored -> "bath-not-locked";
            case GoodAnalysisMissing ignored -> "good-analysis-missing";
        };
    }

    /** The tank has no bath registered. */
    record BathUnknown(StationId station) implements BathRefusal {}

    /** The tank has a bath already. */
    record BathAlreadyRegistered(StationId station) implements BathRefusal {}

    /** Whoever signs holds none of {@code roles}. */
    record BathRoleMissing(BadgeId badge, List<Role> roles) implements BathRefusal {}

    /** Somebody stopped its use. */
    record BathLocked(StationId station, BathLock.Cause cause, String reason, Moment since, BadgeId by)
            implements BathRefusal {}

    /** An analysis locked it, by limits that hold no more; a good one has to come. */
    record BathLockedByAnalysis(StationId station, Moment since) implements BathRefusal {}

    /** A quantity lay below its minimum in the last analysis. */
    record BathBelowLimit(StationId station, BathQuantity quantity, BigDecimal value, BigDecimal minimum, String unit,
            String sample) implements BathRefusal {}

    /** A quantity lay above its maximum in the last analysis. */
    record BathAboveLimit(StationId station, BathQuantity quantity, BigDecimal value, BigDecimal maximum, String unit,
            String sample) implements BathRefusal {}

    /** This fill was never analysed. */
    record BathNeverAnalysed(StationId station, int fill) implements BathRefusal {}

    /** Concentrate was added and no good sample taken since. */
    record BathStrengthened(StationId station, Moment since) implements BathRefusal {}

    /** The time since the last good sample has run out. */
    record BathAnalysisOverdue(StationId station, String sample, Moment takenAt, Moment dueAt)
            implements BathRefusal {}

    /** As many loads as allowed went in since the last good sample. */
    record BathLoadsUsedUp(StationId station, int loads, String sample) implements BathRefusal {}

    /** As much area as allowed went in since the last good sample. */
    record BathAreaUsedUp(StationId station, BigDecimal areaSquareMetres, String sample) implements BathRefusal {}

    /** As many baskets are in the tank as have room. */
    record TankOccupied(StationId station, List<BinId> baskets, int capacity) implements BathRefusal {}

    /** The number was used for another sample of this bath. */
    record SampleNumberTaken(StationId station, String sample) implements BathRefusal {}

    /** The sample is older than the last one, or than this fill. */
    record SampleOutOfOrder(StationId station, Moment takenAt, Moment earliest) implements BathRefusal {}

    /** The sample would be taken later than now. */
    record SampleInTheFuture(StationId station, Moment takenAt) implements BathRefusal {}

    /** Quantities with limits were not measured. */
    record AnalysisIncomplete(StationId station, List<BathQuantity> missing) implements BathRefusal {}

    /** It has no such lock. */
    record BathNotLocked(StationId station, BathLock.Cause cause) implements BathRefusal {}

    /** No good sample was taken since it was locked. */
    record GoodAnalysisMissing(StationId station, Moment since) implements BathRefusal {}
}
