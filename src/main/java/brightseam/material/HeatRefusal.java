package brightseam.material;

import brightseam.kernel.HeatId;
import brightseam.kernel.Refusal;

/** The rules that stand against a {@link HeatCommand}. */
public sealed interface HeatRefusal extends Refusal {

    /** Which heat. */
    HeatId heat();

    @Override
    default String code() {
        return switch (this) {
            case HeatUnknown ignored -> "heat-unknown";
            case HeatAlreadyRegistered ignored -> "heat-already-registered";
            case HeatOnHold ignored -> "heat-on-hold";
            case HeatNotOnHold ignored -> "heat-not-on-hold";
        };
    }

    /** No such heat was ever received. */
    record HeatUnknown(HeatId heat) implements HeatRefusal {}

    /** The label is in use already, for the metal on {@code certificateNumber}. */
    record HeatAlreadyRegistered(HeatId heat, String certificateNumber) implements HeatRefusal {}

    /** It is on hold already, for {@code reason}. */
    record HeatOnHold(HeatId heat, String reason) implements HeatRefusal {}

    /** There is no hold to release. */
    record HeatNotOnHold(HeatId heat) implements HeatRefusal {}
}
