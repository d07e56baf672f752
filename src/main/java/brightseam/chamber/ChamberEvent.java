package brightseam.chamber;

import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.util.Optional;

/** What happened to one chamber. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface ChamberEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which chamber. */
    StationId station();

    /** Its record began. */
    record Registered(Origin origin, StationId station, ChamberTerms terms, Signer signer) implements ChamberEvent {}

    /** Other volumes, flows, limits or materials hold. */
    record TermsChanged(Origin origin, StationId station, ChamberTerms terms, String reason, Signer signer)
            implements ChamberEvent {}

    /** A leak test was entered; see {@link LeakTest}. */
    record LeakTested(Origin origin, StationId station, BigDecimal airLitresPerMinute,
            Optional<BigDecimal> mixingEfficiency, String how, Signer signer) implements ChamberEvent {}

    /** One source of argon came off, another went on; either may be missing, not both. */
    record ChangedOver(Origin origin, StationId station, Optional<SupplyId> off, Optional<SupplyId> on, Signer signer)
            implements ChamberEvent {}

    /** A session's argon was counted. */
    record ArgonUsed(Origin origin, StationId station, ConsumptionReport report) implements ChamberEvent {}
}
