package brightseam.weld;

import brightseam.kernel.SupplyId;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What the stored readings prove of the oxygen over one stretch of time. Computed, never typed; numbers are rounded to
 * what is printed.
 *
 * @param meter whose readings
 * @param from wall time of the beginning of the stretch
 * @param to wall time of its end, with the time that the meter takes to answer
 * @param oxygenPpmLimit the limit that it was held to
 * @param oxygenPpmHighest the highest reading; empty where there was none
 * @param oxygenPpmMean the mean, each reading weighted by how long it stood
 * @param secondsAbove how long it lay above the limit
 * @param excursions the spans above the limit
 * @param gaps the spans in which no usable reading came for longer than allowed
 * @param gapSecondsMax the longest time between readings that was allowed
 * @param readings how many readings lie in it
 * @param readingsDoubtful those of them that were out of range, frozen, or of a meter whose calibration was over
 * @param seriesSha256 SHA-256 of the stored stretch
 * @param proven whether readings that count cover all of it
 */
public record GasEvidence(
        SupplyId meter,
        Instant from,
        Instant to,
        BigDecimal oxygenPpmLimit,
        Optional<BigDecimal> oxygenPpmHighest,
        Optional<BigDecimal> oxygenPpmMean,
        BigDecimal secondsAbove,
        List<HotSpan> excursions,
        List<HotSpan> gaps,
        BigDecimal gapSecondsMax,
        int readings,
        int readingsDoubtful,
        String seriesSha256,
        boolean proven) {

    /** Copies the lists. */
    public GasEvidence {
        excursions = List.copyOf(excursions);
        gaps = List.copyOf(gaps);
    }

    /** Whether it proves that the oxygen stayed at the limit or below all the time. */
    public boolean clean() {
        return proven && excursions.isEmpty() && gaps.isEmpty();
    }
}
