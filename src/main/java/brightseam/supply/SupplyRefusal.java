package brightseam.supply;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Refusal;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Surface;
import java.time.LocalDate;
import java.util.List;

/** The rules that stand against a {@link SupplyCommand}, and against a supply at a step. */
public sealed interface SupplyRefusal extends Refusal {

    /** Which supply. */
    SupplyId supply();

    @Override
    default String code() {
        return switch (this) {
            case SupplyUnknown ignored -> "supply-unknown";
            case SupplyAlreadyRegistered ignored -> "supply-already-registered";
            case SupplyExpired ignored -> "supply-expired";
            case CalibrationOverdue ignored -> "calibration-overdue";
            case Contaminated ignored -> "supply-contaminated";
            case MayNotTouch ignored -> "supply-may-not-touch";
            case SupplyUsedUp ignored -> "supply-used-up";
            case SupplyRetired ignored -> "supply-retired";
            case WrongSupply ignored -> "wrong-supply";
            case TypeMayNotTouch ignored -> "supply-type-may-not-touch";
            case TouchesNothing ignored -> "supply-touches-nothing";
            case CalibrationMissing ignored -> "calibration-missing";
            case NoGauge ignored -> "no-gauge";
            case NotCleanable ignored -> "supply-not-cleanable";
            case NotContaminated ignored -> "supply-not-contaminated";
            case AlreadyOpen ignored -> "supply-already-open";
        };
    }

    /** No such supply was ever registered. */
    record SupplyUnknown(SupplyId supply) implements SupplyRefusal {}

    /** The label is in use already. */
    record SupplyAlreadyRegistered(SupplyId supply, String title) implements SupplyRefusal {}

    /** Its expiry date is over. */
    record SupplyExpired(SupplyId supply, String title, LocalDate lastDay) implements SupplyRefusal {}

    /** The gauge's calibration is over, or the new one would be. */
    record CalibrationOverdue(SupplyId supply, String title, LocalDate lastDay) implements SupplyRefusal {}

    /** It touched what must not come onto titanium. */
    record Contaminated(SupplyId supply, String title, String what) implements SupplyRefusal {}

    /** It may not touch pieces in this state. */
    record MayNotTouch(SupplyId supply, String title, Surface surface) implements SupplyRefusal {}

    /** Nothing is left of it. */
    record SupplyUsedUp(SupplyId supply, String title) implements SupplyRefusal {}

    /** It left the shop. */
    record SupplyRetired(SupplyId supply, String title) implements SupplyRefusal {}

    /** The step asks for something else: one of {@code expected}. */
    record WrongSupply(SupplyId supply, List<String> expected, ContactKind foundKind, String found)
            implements SupplyRefusal {
        /** Copies the list. */
        public WrongSupply {
            expected = List.copyOf(expected);
        }
    }

    /** Nothing of its type may touch {@code surface} pieces. */
    record TypeMayNotTouch(SupplyId supply, String type, Surface surface) implements SupplyRefusal {}

    /** It is kept for nothing. */
    record TouchesNothing(SupplyId supply) implements SupplyRefusal {}

    /** A gauge comes with the last day of its calibration. */
    record CalibrationMissing(SupplyId supply) implements SupplyRefusal {}

    /** Only gauges are calibrated. */
    record NoGauge(SupplyId supply, ContactKind kind) implements SupplyRefusal {}

    /** What is thrown away after use is not cleaned. */
    record NotCleanable(SupplyId supply, ContactKind kind) implements SupplyRefusal {}

    /** Nothing was reported that could be cleaned off. */
    record NotContaminated(SupplyId supply) implements SupplyRefusal {}

    /** It is open already. */
    record AlreadyOpen(SupplyId supply) implements SupplyRefusal {}
}
