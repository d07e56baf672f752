package brightseam.ui.chamber;

import brightseam.chart.ChartFit;
import brightseam.kernel.Moment;
import brightseam.purge.Estimate;
import brightseam.purge.Forecast;
import brightseam.purge.LevelCause;
import brightseam.purge.PurgeFit;
import brightseam.purge.PurgeOutlook;
import brightseam.session.PurgeCourse;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a measured curve says of its end, in words and as a curve. */
final class PurgeWords {

    private static final double SHARE = 0.9;
    private static final double LEVEL_SHOWN_MINUTES = 15;
    private static final int LEVEL_POINTS = 20;
    private static final double MILLILITRES = 1000;

    private PurgeWords() {}

    /** {@code Fit at 14:32 (14:26 to 14:41), in 23 min}; or why nobody can say. */
    static String forecast(PurgeOutlook outlook, Moment start, Moment now, ZoneId zone) {
        return switch (outlook) {
            case PurgeOutlook.OnCourse on when on.forecast().minutes().value() <= 0 ->
                "At the limit. It has to stay there for the dwell.";
            case PurgeOutlook.OnCourse on -> {
                Moment from = start.plus(seconds(on.fit().endSeconds()));
                Estimate minutes = on.forecast().minutes();
                Instant fit = from.plus(minutes(minutes.value())).wall();
                yield "Fit at " + clock(fit, now, zone) + " ("
                        + clock(from.plus(minutes(minutes.low())).wall(), now, zone) + " to "
                        + clock(from.plus(minutes(minutes.high())).wall(), now, zone) + "), "
                        + Words.distance(fit, now.wall());
            }
            case PurgeOutlook.LevelsOff level -> "It will not get there: the curve levels off above the limit.";
            case PurgeOutlook.TooEarly early -> switch (early.why()) {
                case TOO_FEW_READINGS -> "Too early to say: readings are few so far.";
                case NO_FLOW -> "Nothing flows: nobody can say.";
                case NOT_FALLING -> "Not falling yet.";
                case DOES_NOT_FIT -> "The curve does not look like one purge: a door, a flow that changed, a spike?";
                case LEVEL_NOT_TOLD -> early.minutesAtLeast().isEmpty() ? "Falling. Too early to say when."
                        : "Falling. Not before " + clock(now.wall().plus(minutes(
                                early.minutesAtLeast().getAsDouble())), now, zone) + ".";
            };
        };
    }

    /** What it means that oxygen or moisture levels off above its limit, and what to look for, where one does. */
    static Optional<String> level(PurgeCourse course) {
        List<String> told = Stream.of(oxygenLevel(course.oxygen()), course.cause().flatMap(PurgeWords::cause),
                course.moisture().flatMap(PurgeWords::moistureLevel)).flatMap(Optional::stream).toList();
        return told.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", told));
    }

    private static Optional<String> oxygenLevel(PurgeOutlook outlook) {
        return outlook instanceof PurgeOutlook.LevelsOff off ? Optional.of("Levels off at about "
                + Ppm.of(BigDecimal.valueOf(off.levelPpm().value())) + ": as much as a leak of "
                + millilitres(off.leakAirLitresPerMinute().value()) + " of air, or argon with "
                + Ppm.of(BigDecimal.valueOf(off.supplyPpmInstead().value()))
                + ". Look for a glove, a door seal, a hose joint, a cylinder that was changed.") : Optional.empty();
    }

    private static Optional<String> moistureLevel(PurgeOutlook outlook) {
        return outlook instanceof PurgeOutlook.LevelsOff off ? Optional.of("Moisture levels off at about "
                + Ppm.of(BigDecimal.valueOf(off.levelPpm().value())) + ": as much as argon with "
                + Ppm.of(BigDecimal.valueOf(off.supplyPpmInstead().value()))
                + ", or gloves and walls that give water off.") : Optional.empty();
    }

    private static Optional<String> cause(LevelCause cause) {
        return switch (cause) {
            case AIR_LEAK -> Optional.of("Moisture is up as room air would bring it: that fits a leak.");
            case OXYGEN_IN_SUPPLY -> Optional.of("Room air would bring more moisture: that fits the argon.");
            case WET_GAS_OR_SURFACES -> Optional.of("Room air would bring less moisture: gas or surfaces are wet.");
            case CANNOT_TELL -> Optional.empty();
        };
    }

    /** The curve to come with its band; empty where there is none. */
    static Optional<ChartFit> fit(PurgeOutlook outlook, Moment start) {
        return switch (outlook) {
            case PurgeOutlook.OnCourse on -> {
                long from = start.elapsedMillis() + Math.round(on.fit().endSeconds() * 1000);
                Estimate minutes = on.forecast().minutes();
                yield Optional.of(new ChartFit(spots(on.forecast().band(), start), SHARE,
                        minutes.value() <= 0 ? Optional.empty() : Optional.of(new ChartFit.Arrival(
                                from + millis(minutes.value()), from + millis(minutes.low()),
                                from + millis(minutes.high())))));
            }
            case PurgeOutlook.LevelsOff level -> Optional.of(new ChartFit(
                    spots(band(level.fit()), start), SHARE, Optional.empty()));
            case PurgeOutlook.TooEarly early -> Optional.empty();
        };
    }

    private static List<Forecast.BandPoint> band(PurgeFit fit) {
        return fit.band(LEVEL_SHOWN_MINUTES, LEVEL_POINTS);
    }

    private static List<ChartFit.Spot> spots(List<Forecast.BandPoint> band, Moment start) {
        return band.stream().map(point -> new ChartFit.Spot(start.elapsedMillis() + Math.round(point.seconds() * 1000),
                point.lowPpm(), point.middlePpm(), point.highPpm())).toList();
    }

    private static String millilitres(double litresPerMinute) {
        double millilitres = litresPerMinute * MILLILITRES;
        return millilitres < 10 ? String.format(java.util.Locale.ROOT, "%.1f\u00a0mL/min", millilitres)
                : Math.round(millilitres) + "\u00a0mL/min";
    }

    private static String clock(Instant at, Moment now, ZoneId zone) {
        return Words.clockTime(at, now.wall(), zone);
    }

    private static Duration seconds(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    private static Duration minutes(double minutes) {
        return Duration.ofMillis(millis(minutes));
    }

    private static long millis(double minutes) {
        return Math.round(minutes * 60_000);
    }
}
