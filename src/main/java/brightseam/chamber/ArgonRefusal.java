package brightseam.chamber;

import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import java.math.BigDecimal;

/** The rules that stand against an {@link ArgonCommand}. */
public sealed interface ArgonRefusal extends Refusal {

    /** Which source. */
    SupplyId supply();

    @Override
    default String code() {
        return switch (this) {
            case ArgonUnknown ignored -> "argon-unknown";
            case ArgonAlreadyDelivered ignored -> "argon-already-delivered";
            case ArgonEmpty ignored -> "argon-empty";
            case ArgonRetired ignored -> "argon-retired";
            case ArgonConnectedElsewhere ignored -> "argon-connected-elsewhere";
            case ArgonStillConnected ignored -> "argon-still-connected";
            case ArgonNeverRead ignored -> "argon-never-read";
            case ArgonAtRest ignored -> "argon-at-rest";
            case ArgonTooImpure ignored -> "argon-too-impure";
            case ArgonTooMoist ignored -> "argon-too-moist";
            case ReadingOfAnotherForm ignored -> "argon-reading-of-another-form";
            case ReadingOutOfOrder ignored -> "argon-reading-out-of-order";
            case ReadingRises ignored -> "argon-reading-rises";
        };
    }

    /** No such source was ever delivered. */
    record ArgonUnknown(SupplyId supply) implements ArgonRefusal {}

    /** The label is in use already. */
    record ArgonAlreadyDelivered(SupplyId supply) implements ArgonRefusal {}

    /** It was written down as empty. */
    record ArgonEmpty(SupplyId supply) implements ArgonRefusal {}

    /** It left the shop. */
    record ArgonRetired(SupplyId supply) implements ArgonRefusal {}

    /** It feeds another chamber. */
    record ArgonConnectedElsewhere(SupplyId supply, StationId station) implements ArgonRefusal {}

    /** It feeds a chamber; it is taken off first. */
    record ArgonStillConnected(SupplyId supply, StationId station) implements ArgonRefusal {}

    /** Nobody has read how much it holds. */
    record ArgonNeverRead(SupplyId supply) implements ArgonRefusal {}

    /** What it holds is what stays in it. */
    record ArgonAtRest(SupplyId supply, BigDecimal found, BigDecimal rest, String unit) implements ArgonRefusal {}

    /**
     * Its oxygen, with what leaks in at the holding flow, would keep the chamber above its limit for ever.
     *
     * @param oxygenPpm of the gas by its certificate
     * @param settlesAtPpm where the chamber would come to rest
     * @param limitPpm the chamber's limit to weld
     */
    record ArgonTooImpure(SupplyId supply, StationId station, BigDecimal oxygenPpm, BigDecimal settlesAtPpm,
            BigDecimal limitPpm) implements ArgonRefusal {}

    /** Its moisture alone is above the chamber's limit. */
    record ArgonTooMoist(SupplyId supply, StationId station, BigDecimal moisturePpm, BigDecimal limitPpm)
            implements ArgonRefusal {}

    /** A pressure of a dewar, or a level of a cylinder. */
    record ReadingOfAnotherForm(SupplyId supply, ArgonForm form) implements ArgonRefusal {}

    /** The reading is older than the last one, or lies in the future. */
    record ReadingOutOfOrder(SupplyId supply, Moment at, Moment earliest) implements ArgonRefusal {}

    /** It would hold more than at the last reading; a vessel that was filled again comes with a new label. */
    record ReadingRises(SupplyId supply, BigDecimal beforeStandardLitres, BigDecimal nowStandardLitres)
            implements ArgonRefusal {}
}
