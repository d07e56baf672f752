package brightseam.ui.gear;

import brightseam.chamber.ArgonForecast;
import brightseam.chamber.ArgonNeed;
import brightseam.chamber.ArgonOutlook;
import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import brightseam.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * How the argon of one chamber stands.
 *
 * @param station the chamber
 * @param title what people call it
 * @param verdict one sentence, the first thing to read
 * @param stops whether no session can be begun now
 * @param reasons what stands against beginning one, in sentences
 * @param left what can be drawn, connected and standing by
 * @param takes what a session takes
 * @param lasts how long what is connected lasts at the holding flow
 * @param sources every source, connected ones first
 * @param sessions the sessions to come
 * @param undated how many kits have no time for a session
 */
record ArgonBoard(StationId station, String title, String verdict, boolean stops, List<String> reasons, String left,
        String takes, String lasts, List<SourceLine> sources, List<ForecastLine> sessions, int undated) {

    /** What the page is made from besides the sources. */
    record Facts(StationId station, String title, ArgonOutlook outlook, Optional<ArgonForecast> forecast,
            List<String> reasons, List<SourceLine> sources, int undated) {}

    /** The board of {@code facts} at {@code now}; {@code titles} says what a kit is called. */
    static ArgonBoard of(Facts facts, Function<KitId, String> titles, Instant now, ZoneId zone) {
        ArgonOutlook outlook = facts.outlook();
        List<ForecastLine> lines = facts.forecast().map(forecast -> forecast.lines().stream()
                .map(line -> ForecastLine.of(line, titles, now, zone)).toList()).orElse(List.of());
        return new ArgonBoard(facts.station(), facts.title(), verdict(facts, now, zone),
                !outlook.objections().isEmpty(), facts.reasons(),
                GasWords.cubicMetres(outlook.connectedStandardLitres()) + " connected, "
                        + GasWords.cubicMetres(outlook.standbyStandardLitres()) + " standing by",
                takes(outlook.need()), Words.duration(outlook.lastsHolding()), facts.sources(), lines,
                facts.undated());
    }

    /** The sources that stand at {@code place}. */
    List<SourceLine> sources(SourceLine.Place place) {
        return sources.stream().filter(line -> line.place() == place).toList();
    }

    private static String verdict(Facts facts, Instant now, ZoneId zone) {
        if (!facts.outlook().objections().isEmpty()) {
            return "No session can be begun now.";
        }
        ArgonForecast forecast = facts.forecast().orElseThrow();
        int all = forecast.lines().size();
        if (all == 0) {
            return "A session can be begun now. None is due.";
        }
        String sessions = Words.count(all, "session", "sessions");
        return forecast.runsOutAt()
                .map(at -> "Runs out " + Words.when(at, now, zone) + ": " + forecast.sessionsLeft() + " of " + sessions
                        + " can be finished.")
                .or(() -> forecast.changeOverAt().map(at -> "Enough for " + sessions + "; change over "
                        + Words.when(at, now, zone) + "."))
                .orElse("Enough for " + sessions + " without a change-over.");
    }

    private static String takes(ArgonNeed need) {
        return switch (need) {
            case ArgonNeed.Needed needed -> GasWords.cubicMetres(needed.standardLitres()) + ", purging for "
                    + Words.duration(needed.purge());
            case ArgonNeed.Impossible never -> "never gets there";
        };
    }
}
