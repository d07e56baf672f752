package brightseam.chamber;

import brightseam.kernel.StationId;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a session can be begun with the argon that is there.
 *
 * @param station the chamber
 * @param sources connected first, then what stands by; without those of unknown content
 * @param need what the session takes; impossible where the gas never gets there
 * @param connectedStandardLitres what can be drawn of the connected sources
 * @param standbyStandardLitres what can be drawn of the others
 * @param lastsHolding how long the connected sources last at the holding flow
 * @param changeOverAt when to change over if the session began now; empty where the connected ones outlast it
 * @param objections what stands against beginning the purge; nothing where it can be finished
 */
public record ArgonOutlook(
        StationId station,
        List<ArgonLeft> sources,
        ArgonNeed need,
        double connectedStandardLitres,
        double standbyStandardLitres,
        Duration lastsHolding,
        Optional<Instant> changeOverAt,
        List<ChamberRefusal> objections) {

    /** Copies the lists. */
    public ArgonOutlook {
        sources = List.copyOf(sources);
        objections = List.copyOf(objections);
    }

    /**
     * The outlook of {@code chamber} for a session that begins now.
     *
     * <p>The purge itself has to be covered by what is connected, and the whole session by that and what stands by:
     * nobody changes a source over in the middle of a purge that has to be begun anew then.
     *
     * @param now on the wall
     */
    public static ArgonOutlook of(Chamber chamber, List<ArgonLeft> sources, ArgonNeed need, Instant now) {
        double connected = sum(sources, true);
        double standby = sum(sources, false);
        List<ArgonLeft> feeding = sources.stream().filter(ArgonLeft::connected).toList();
        double holdPerHour = ArgonNeed.standard(60 * chamber.terms().flows().holdLitresPerMinute().doubleValue(),
                chamber.terms());
        double purgePerHour = ArgonNeed.standard(60 * chamber.terms().flows().purgeLitresPerMinute().doubleValue(),
                chamber.terms());
        Optional<ArgonForecast> walk = need instanceof ArgonNeed.Needed needed
                ? Optional.of(ArgonForecast.of(sources, List.of(
                        new ArgonDemand(Optional.empty(), Optional.empty(), now, needed)), now)) : Optional.empty();
        return new ArgonOutlook(chamber.station(), sources, need, connected, standby,
                ArgonForecast.lasts(feeding, holdPerHour), walk.flatMap(ArgonForecast::changeOverAt),
                objections(chamber, need, connected, standby, ArgonForecast.lasts(feeding, purgePerHour)));
    }

    /** What the session takes in standard litres, to the whole litre; empty where it never gets there. */
    public Optional<BigDecimal> neededStandardLitres() {
        return need instanceof ArgonNeed.Needed needed
                ? Optional.of(ArgonRules.whole(needed.standardLitres())) : Optional.empty();
    }

    /** What can be drawn of all sources, to the whole litre. */
    public BigDecimal leftStandardLitres() {
        return ArgonRules.whole(connectedStandardLitres + standbyStandardLitres);
    }

    private static List<ChamberRefusal> objections(
            Chamber chamber, ArgonNeed need, double connected, double standby, Duration lasts) {
        if (chamber.connected().isEmpty()) {
            return List.of(new ChamberRefusal.NoArgonConnected(chamber.station()));
        }
        List<ChamberRefusal> against = new ArrayList<>();
        switch (need) {
            case ArgonNeed.Impossible never -> against.add(new ChamberRefusal.LimitOutOfReach(chamber.station(),
                    never.what(), ArgonRules.rounded(never.limitPpm()), ArgonRules.rounded(never.levelPpm())));
            case ArgonNeed.Needed needed -> {
                double missing = Math.max(needed.purgeStandardLitres() - connected,
                        needed.standardLitres() - connected - standby);
                if (missing > 0) {
                    against.add(new ChamberRefusal.ArgonTooLittle(chamber.station(),
                            ArgonRules.whole(needed.standardLitres()), ArgonRules.whole(needed.purgeStandardLitres()),
                            ArgonRules.whole(connected), ArgonRules.whole(standby),
                            ArgonRules.whole(Math.ceil(missing)), lasts));
                }
            }
        }
        return against;
    }

    private static double sum(List<ArgonLeft> sources, boolean connected) {
        return sources.stream().filter(one -> one.connected() == connected)
                .mapToDouble(ArgonLeft::usableStandardLitres).sum();
    }
}
