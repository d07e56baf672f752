package brightseam.scan;

import java.util.Objects;
import java.util.Optional;

/**
 * A scan as it arrived, before anything is believed of it.
 *
 * @param data what was sent; any string
 * @param symbology the symbology identifier where it came apart from the data, such as {@code ]d2}
 * @param source how it came in
 */
public record RawScan(String data, Optional<SymbologyIdentifier> symbology, ScanSource source) {

    /** Refuses missing parts only. */
    public RawScan {
        Objects.requireNonNull(data, "data");
        Objects.requireNonNull(symbology, "symbology");
        Objects.requireNonNull(source, "source");
    }

    /** What a wedge scanner sent. */
    public static RawScan wedge(String data) {
        return new RawScan(data, Optional.empty(), ScanSource.WEDGE);
    }

    /** What somebody typed. */
    public static RawScan typed(String data) {
        return new RawScan(data, Optional.empty(), ScanSource.TYPED);
    }

    /** What the camera read, with the symbology identifier that the reader gave, if any. */
    public static RawScan camera(String data, Optional<SymbologyIdentifier> symbology) {
        return new RawScan(data, symbology, ScanSource.CAMERA);
    }
}
