package brightseam.ui.gear;

import brightseam.chamber.ArgonForecast;
import brightseam.chamber.ArgonNeed;
import brightseam.kernel.KitId;
import java.time.Instant;
import java.time.ZoneId;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One session in the forecast.
 *
 * @param what which session and kit
 * @param begins when it begins to draw
 * @param takes how much, in parts
 * @param left what can be drawn afterwards
 * @param changeOver when to connect what, in words
 * @param verdict whether it can be finished
 * @param enough the same as a truth
 */
record ForecastLine(
        String what, String begins, String takes, String left, String changeOver, String verdict, boolean enough) {

    /** The line of {@code line}; {@code titles} says what a kit is called. */
    static ForecastLine of(ArgonForecast.Line line, Function<KitId, String> titles, Instant now, ZoneId zone) {
        ArgonNeed.Needed need = line.demand().need();
        String changes = line.changeOvers().stream()
                .map(over -> brightseam.words.Words.clockTime(over.at(), now, zone) + ": connect " + over.next())
                .collect(Collectors.joining("; "));
        return new ForecastLine(what(line, titles), begins(line, now, zone), takes(need),
                GasWords.cubicMetres(line.leftStandardLitres()), changes.isEmpty() ? "none" : changes,
                line.isEnough() ? "enough" : "SHORT by " + GasWords.cubicMetres(line.shortStandardLitres()),
                line.isEnough());
    }

    private static String what(ArgonForecast.Line line, Function<KitId, String> titles) {
        String kit = line.demand().kit().map(id -> id + " " + titles.apply(id)).orElse("");
        return line.demand().session().map(session -> session + " for " + kit).orElse(kit);
    }

    private static String begins(ArgonForecast.Line line, Instant now, ZoneId zone) {
        return line.demand().session().isPresent() ? "runs now"
                : brightseam.words.Words.when(line.from(), now, zone);
    }

    private static String takes(ArgonNeed.Needed need) {
        return GasWords.cubicMetres(need.standardLitres()) + ": purge "
                + GasWords.cubicMetres(need.purgeStandardLitres()) + ", holding "
                + GasWords.cubicMetres(need.holdStandardLitres()) + ", lock "
                + GasWords.cubicMetres(need.lockStandardLitres());
    }
}
