package brightseam.device;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.people.Role;
import java.math.BigDecimal;
import java.util.List;

/** The rules that stand against a {@link MeterCommand}. */
public sealed interface MeterRefusal extends Refusal {

    @Override
    default String code() {
        return switch (this) {
            case MeterUnknown ignored -> "meter-unknown";
            case MeterAlreadyRegistered ignored -> "meter-already-registered";
            case MeterIsNoGauge ignored -> "meter-is-no-gauge";
            case MeterStationUnknown ignored -> "meter-station-unknown";
            case MeterRoleMissing ignored -> "meter-role-missing";
            case MeterOutOfUse ignored -> "meter-out-of-use";
            case MeterInUse ignored -> "meter-in-use";
            case MeterHasNoToken ignored -> "meter-has-no-token";
            case MeterIsNotTyped ignored -> "meter-is-not-typed";
            case ReadingOutsideRange ignored -> "reading-outside-range";
        };
    }

    /** No meter is registered under the label. */
    record MeterUnknown(SupplyId meter) implements MeterRefusal {}

    /** It is a meter already. */
    record MeterAlreadyRegistered(SupplyId meter) implements MeterRefusal {}

    /** The supply register has no gauge under the label, so that nothing is known of its calibration. */
    record MeterIsNoGauge(SupplyId meter) implements MeterRefusal {}

    /** The station is not registered. */
    record MeterStationUnknown(SupplyId meter, StationId station) implements MeterRefusal {}

    /** Whoever signs holds none of {@code roles}. */
    record MeterRoleMissing(BadgeId badge, List<Role> roles) implements MeterRefusal {}

    /** It is out of use. */
    record MeterOutOfUse(SupplyId meter, String reason) implements MeterRefusal {}

    /** It is in use already. */
    record MeterInUse(SupplyId meter) implements MeterRefusal {}

    /** Only a device that sends by itself has a token. */
    record MeterHasNoToken(SupplyId meter) implements MeterRefusal {}

    /** Its readings come in by themselves. */
    record MeterIsNotTyped(SupplyId meter) implements MeterRefusal {}

    /** The meter cannot show that. */
    record ReadingOutsideRange(SupplyId meter, BigDecimal value, BigDecimal low, BigDecimal high, String unit)
            implements MeterRefusal {}
}
