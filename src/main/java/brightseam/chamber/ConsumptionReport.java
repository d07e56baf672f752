package brightseam.chamber;

import brightseam.kernel.SessionId;
import brightseam.kernel.SupplyId;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * A session's argon, forecast and used, in standard litres (15 °C, one atmosphere), whole litres.
 *
 * @param session which session
 * @param forecastStandardLitres what was forecast for it when its purge began
 * @param byContentStandardLitres what left the sources by pressure or level; empty where one was not read
 * @param byFlowStandardLitres what the flow meters counted; empty without a series
 * @param unprovenSeconds how much of the session no flow meter told
 * @param sources what left each source by its readings
 */
public record ConsumptionReport(
        SessionId session,
        BigDecimal forecastStandardLitres,
        Optional<BigDecimal> byContentStandardLitres,
        Optional<BigDecimal> byFlowStandardLitres,
        long unprovenSeconds,
        List<SourceUse> sources) {

    /** What left one source; below zero where its readings say that it gained. */
    public record SourceUse(SupplyId supply, BigDecimal standardLitres) {}

    /** Copies the list. */
    public ConsumptionReport {
        sources = List.copyOf(sources);
    }

    /** What counts as used: by content, else by flow; empty where neither is known. */
    public Optional<BigDecimal> usedStandardLitres() {
        return byContentStandardLitres.or(() -> byFlowStandardLitres);
    }

    /** How far what was used lies from the forecast, per cent of the forecast to one decimal; above zero for more. */
    public Optional<BigDecimal> differencePercent() {
        return usedStandardLitres().filter(used -> forecastStandardLitres.signum() > 0)
                .map(used -> used.subtract(forecastStandardLitres).multiply(BigDecimal.valueOf(100))
                        .divide(forecastStandardLitres, 1, RoundingMode.HALF_EVEN));
    }

    /** How far the two ways of counting lie apart, per cent of what the flow meters counted, to one decimal. */
    public Optional<BigDecimal> disagreementPercent() {
        return byContentStandardLitres.flatMap(content -> byFlowStandardLitres
                .filter(flow -> flow.signum() > 0)
                .map(flow -> content.subtract(flow).multiply(BigDecimal.valueOf(100))
                        .divide(flow, 1, RoundingMode.HALF_EVEN)));
    }
}
