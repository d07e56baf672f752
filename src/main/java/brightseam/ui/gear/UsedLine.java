package brightseam.ui.gear;

import brightseam.chamber.ConsumptionReport;
import brightseam.chamber.shell.ArgonUse;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What one session used.
 *
 * @param session its name
 * @param counted when it was counted
 * @param forecast what was forecast
 * @param byContent what left the sources
 * @param byFlow what the flow meters counted
 * @param difference how far it lay from the forecast
 * @param sources from which sources
 */
record UsedLine(String session, String counted, String forecast, String byContent, String byFlow, String difference,
        String sources) {

    /** The line of {@code use}. */
    static UsedLine of(ArgonUse use, ZoneId zone) {
        ConsumptionReport report = use.report();
        return new UsedLine(report.session().value(), Words.stamp(use.countedAt(), zone),
                GasWords.cubicMetres(report.forecastStandardLitres()),
                report.byContentStandardLitres().map(GasWords::cubicMetres).orElse("not read"),
                byFlow(report), report.differencePercent().map(UsedLine::difference).orElse("not known"),
                report.sources().stream().map(source -> source.supply() + " "
                        + GasWords.cubicMetres(source.standardLitres())).collect(Collectors.joining(", ")));
    }

    /** Every session with a column for each number, in standard litres, oldest first; times in UTC. */
    static String csv(List<ArgonUse> latestFirst) {
        return brightseam.ui.desk.Csv.write(List.of("session", "counted_at", "forecast_standard_litres",
                "by_content_standard_litres", "by_flow_standard_litres", "unproven_seconds", "difference_pct",
                "sources"), latestFirst.reversed().stream().map(UsedLine::cells).toList());
    }

    private static List<String> cells(ArgonUse use) {
        ConsumptionReport report = use.report();
        return List.of(report.session().value(), use.countedAt().toString(),
                report.forecastStandardLitres().toPlainString(), number(report.byContentStandardLitres()),
                number(report.byFlowStandardLitres()), String.valueOf(report.unprovenSeconds()),
                number(report.differencePercent()), report.sources().stream().map(source -> source.supply() + " "
                        + source.standardLitres().toPlainString()).collect(Collectors.joining(" | ")));
    }

    private static String number(Optional<BigDecimal> value) {
        return value.map(BigDecimal::toPlainString).orElse("");
    }

    private static String byFlow(ConsumptionReport report) {
        String gap = report.unprovenSeconds() == 0 ? ""
                : ", and " + Words.duration(Duration.ofSeconds(report.unprovenSeconds())) + " without a reading";
        return report.byFlowStandardLitres().map(litres -> GasWords.cubicMetres(litres) + gap).orElse("not metered");
    }

    private static String difference(BigDecimal percent) {
        return percent.signum() == 0 ? "as forecast"
                : Words.quantity(percent.abs(), "%") + (percent.signum() > 0 ? " more" : " less");
    }
}
