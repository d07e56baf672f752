package brightseam.scan;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.Syntax;
import brightseam.kernel.TravellerId;
import java.util.Optional;

/**
 * One of our own labels.
 *
 * <p>In the symbol: {@code [)>} RS {@code 06} GS, the kind's data identifier, {@code BS}, the identity, its check
 * character, RS EOT (ISO/IEC 15434 format 06). To read and to type: identity, space, check character.
 *
 * @param kind what it is stuck on
 * @param id the identity, beginning with the kind's letter and a hyphen, such as {@code B-0142}
 */
public record OwnLabel(LabelKind kind, String id) implements ScanReading {

    /** What tells our labels from everybody else's under the same data identifier. */
    static final String PREFIX = "BS";

    /** Refuses an identity that the kernel refuses or that does not begin with the kind's letter and a hyphen. */
    public OwnLabel {
        Syntax.identity("label", id);
        if (!kind.owns(id)) {
            throw new IllegalArgumentException("a " + kind + " label begins with " + kind.letter() + "-");
        }
    }

    /** The label of a bin. */
    public static OwnLabel of(BinId id) {
        return new OwnLabel(LabelKind.BIN, id.value());
    }

    /** The label of a traveller. */
    public static OwnLabel of(TravellerId id) {
        return new OwnLabel(LabelKind.TRAVELLER, id.value());
    }

    /** The label of a heat. */
    public static OwnLabel of(HeatId id) {
        return new OwnLabel(LabelKind.HEAT, id.value());
    }

    /** The label of a badge. */
    public static OwnLabel of(BadgeId id) {
        return new OwnLabel(LabelKind.BADGE, id.value());
    }

    /** The label of a station. */
    public static OwnLabel of(StationId id) {
        return new OwnLabel(LabelKind.STATION, id.value());
    }

    /** The label of a kit. */
    public static OwnLabel of(KitId id) {
        return new OwnLabel(LabelKind.KIT, id.value());
    }

    /** The label of something that touches parts. */
    public static OwnLabel of(SupplyId id) {
        return new OwnLabel(LabelKind.SUPPLY, id.value());
    }

    /** The check character of the identity. */
    public char check() {
        return CheckCharacter.of(id).orElseThrow();
    }

    /** What people read and type, such as {@code B-0142 K}. */
    public String printed() {
        return id + " " + check();
    }

    /** What the symbol holds. */
    public String payload() {
        return "[)>" + Separators.RS + "06" + Separators.GS + kind.dataIdentifier() + PREFIX + id + check()
                + Separators.RS + Separators.EOT;
    }

    /** The bin, where this is a bin's label. */
    public Optional<BinId> bin() {
        return kind == LabelKind.BIN ? Optional.of(new BinId(id)) : Optional.empty();
    }

    /** The traveller, where this is a traveller's label. */
    public Optional<TravellerId> traveller() {
        return kind == LabelKind.TRAVELLER ? Optional.of(new TravellerId(id)) : Optional.empty();
    }

    /** The heat, where this is a heat's label. */
    public Optional<HeatId> heat() {
        return kind == LabelKind.HEAT ? Optional.of(new HeatId(id)) : Optional.empty();
    }

    /** The badge, where this is a badge. */
    public Optional<BadgeId> badge() {
        return kind == LabelKind.BADGE ? Optional.of(new BadgeId(id)) : Optional.empty();
    }

    /** The station, where this is a station's label. */
    public Optional<StationId> station() {
        return kind == LabelKind.STATION ? Optional.of(new StationId(id)) : Optional.empty();
    }

    /** What touches parts, where this is such a label. */
    public Optional<SupplyId> supply() {
        return kind == LabelKind.SUPPLY ? Optional.of(new SupplyId(id)) : Optional.empty();
    }

    /** The kit, where this is a kit's label. */
    public Optional<KitId> kit() {
        return kind == LabelKind.KIT ? Optional.of(new KitId(id)) : Optional.empty();
    }
}
