package brightseam.weld.shell;

import brightseam.device.SeriesEvidence;
import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.weld.GasEvidence;
import brightseam.weld.HotSpan;
import brightseam.weld.Joint;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Optional;

/** Turns what a series proves into the numbers that are printed. */
final class ProvenNumbers {

    private static final int MILLIS_SCALE = 3;

    private ProvenNumbers() {}

    /** The evidence of {@code owed} as a joint's own record keeps it. */
    static GasEvidence own(SupplyId meter, BigDecimal limit, Joint.Owed owed, SeriesEvidence proven) {
        return new GasEvidence(meter, owed.from().wall(), at(owed, proven.toMillis()).wall(), limit,
                highest(proven.highest()), mean(proven.meanTimeWeighted()), seconds(proven.millisAbove()),
                proven.excursions().stream().map(one -> new HotSpan(at(owed, one.fromMillis()).wall(),
                        at(owed, one.toMillis()).wall(), seconds(one.millis()), highest(one.peak()))).toList(),
                proven.gaps().stream().map(one -> new HotSpan(at(owed, one.fromMillis()).wall(),
                        at(owed, one.toMillis()).wall(), seconds(one.millis()), Optional.empty())).toList(),
                seconds(proven.longestGapMillis()), proven.count(), proven.doubtful(), proven.sha256(),
                proven.isProven());
    }

    static Moment at(Joint.Owed owed, long elapsedMillis) {
        return owed.from().plus(Duration.ofMillis(elapsedMillis - owed.from().elapsedMillis()));
    }

    /** Rounded up: never in favour of the weld. */
    static Optional<BigDecimal> highest(double ppm) {
        return Double.isNaN(ppm) ? Optional.empty()
                : Optional.of(BigDecimal.valueOf(ppm).setScale(1, RoundingMode.CEILING));
    }

    static Optional<BigDecimal> mean(double ppm) {
        return Double.isNaN(ppm) ? Optional.empty()
                : Optional.of(BigDecimal.valueOf(ppm).setScale(1, RoundingMode.HALF_UP));
    }

    static BigDecimal seconds(long millis) {
        return BigDecimal.valueOf(millis, MILLIS_SCALE).setScale(1, RoundingMode.CEILING);
    }
}
