package brightseam.ui.gear;

import brightseam.chamber.ArgonForecast;
import brightseam.chamber.ArgonNeed;
import brightseam.kernel.KitId;
import brightseam.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One session in the forecast.
 *
 * @param what which session, or which kit where it has not begun
 * @param title for which kit
 * @param begins when it begins to draw
 * @param takes how much
 * @param parts of which purge, holding and lock
 * @param left what can be drawn afterwards
 * @param changeOver when to connect what, in words
 * @param verdict whether it can be finished
 * @param enough the same as a truth
 */
record ForecastLine(
        String what, String title, String begins, String takes, String parts, String left, String changeOver,
        String verdict, boolean enough) {

    /** The line of {@code line}; {@code titles} says what a kit is called. */
    static ForecastLine of(ArgonForecast.Line line, Function<KitId, String> titles, Instant now, ZoneId zone) {
        ArgonNeed.Needed need = line.demand().need();
        String changes = line.changeOvers().stream()
                .map(over -> Words.clockTime(over.at(), now, zone) + ": connect " + over.next())
                .collect(Collectors.joining("; "));
        String kit = line.demand().kit().map(id -> id + " ").orElse("");
        String title = line.demand().kit().map(titles).orElse("");
        return new ForecastLine(line.demand().session().map(Object::toString).orElse(kit.strip()),
                line.demand().session().isPresent() ? "for " + kit + title : title, begins(line, now, zone),
                GasWords.cubicMetres(need.standardLitres()), parts(need),
                GasWords.cubicMetres(line.leftStandardLitres()), changes.isEmpty() ? "none" : changes,
                line.isEnough() ? "enough" : "SHORT by " + GasWords.cubicMetres(line.shortStandardLitres()),
                line.isEnough());
    }

    private static String begins(ArgonForecast.Line line, Instant now, ZoneId zone) {
        return line.demand().session().isPresent() ? "runs now"
                : Words.when(line.from(), now, zone);
    }

    private static String parts(ArgonNeed.Needed need) {
        return "purge " + GasWords.cubicMetres(need.purgeStandardLitres()) + ", holding "
                + GasWords.cubicMetres(need.holdStandardLitres()) + ", lock "
                + GasWords.cubicMetres(need.lockStandardLitres());
    }
}
