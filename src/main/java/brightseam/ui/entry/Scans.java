package brightseam.ui.entry;

import brightseam.kernel.Moment;
import brightseam.scan.RawScan;
import brightseam.scan.ScanParser;
import brightseam.scan.ScanReading;
import brightseam.ui.parts.Scanned;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/** Turns what a page's scanner, camera or keys sent into a reading. */
public final class Scans {

    private static final ScanParser PARSER = ScanParser.standard();

    private Scans() {}

    /** What {@code scan} says. */
    public static ScanReading read(Scanned scan, Moment now) {
        RawScan raw = new RawScan(scan.data(), Optional.empty(), switch (scan.source()) {
            case WEDGE -> brightseam.scan.ScanSource.WEDGE;
            case CAMERA -> brightseam.scan.ScanSource.CAMERA;
            case TYPED -> brightseam.scan.ScanSource.TYPED;
        });
        return PARSER.parse(raw, LocalDate.ofInstant(now.wall(), ZoneId.systemDefault()));
    }
}
