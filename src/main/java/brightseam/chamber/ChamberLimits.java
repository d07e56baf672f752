package brightseam.chamber;

import brightseam.kernel.Syntax;
import java.time.Duration;

/**
 * What the gas in a chamber has to keep to.
 *
 * @param oxygenPpmToWeld the most oxygen at which the chamber is fit to weld
 * @param oxygenPpmExcursion above this while a joint is hot, the joint has an excursion; not below the first
 * @param moisturePpm the most moisture at which the chamber is fit to weld
 * @param dwell how long oxygen and moisture lie inside before the chamber is fit
 * @param longestGap the longest time without a usable reading during an arc that still proves the joint
 * @param typedEvery how often a reading is typed in where a meter has no feed
 * @param timesSource where these three times come from, at most 200 characters
 */
public record ChamberLimits(
        CitedLimit oxygenPpmToWeld,
        CitedLimit oxygenPpmExcursion,
        CitedLimit moisturePpm,
        Duration dwell,
        Duration longestGap,
        Duration typedEvery,
        String timesSource) {

    /** Refuses an excursion below the limit to weld, a time below zero, and intervals of nothing. */
    public ChamberLimits {
        if (oxygenPpmExcursion.value().compareTo(oxygenPpmToWeld.value()) < 0) {
            throw new IllegalArgumentException("excursion: not below the limit to weld");
        }
        if (dwell.isNegative() || !longestGap.isPositive() || !typedEvery.isPositive()) {
            throw new IllegalArgumentException("dwell: not below zero; longest gap and interval: above zero");
        }
        timesSource = Syntax.text("source of the times", timesSource, 200);
    }
}
