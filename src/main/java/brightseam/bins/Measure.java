package brightseam.bins;

import java.math.BigDecimal;
import java.util.Optional;

/** What a {@link Capacity} can limit besides the number of lots. */
public enum Measure {
    /** How many pieces. */
    PIECES,
    /** Wetted area in square metres. */
    AREA,
    /** Mass in kilograms. */
    MASS;

    Optional<BigDecimal> limit(Capacity capacity) {
        return switch (this) {
            case PIECES -> capacity.pieces().map(BigDecimal::valueOf);
            case AREA -> capacity.areaSquareMetres();
            case MASS -> capacity.massKilograms();
        };
    }

    Optional<BigDecimal> of(LotSize size) {
        return switch (this) {
            case PIECES -> Optional.of(BigDecimal.valueOf(size.pieces()));
            case AREA -> size.areaSquareMetres();
            case MASS -> size.massKilograms();
        };
    }
}
