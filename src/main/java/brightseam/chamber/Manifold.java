package brightseam.chamber;

import brightseam.kernel.Syntax;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Where the argon comes from, and how much of it is left alone.
 *
 * <p>A cylinder is never emptied: what is left keeps air out, and water from its wall counts for more in the last of
 * the gas. Some fabricators take one off below 1000 psi (69 bar) for that reason (AWS G2.4:2014, clause 8).
 *
 * @param sourcesAtOnce how many may be connected, 1 to 12
 * @param restPressureBarGauge what stays in a cylinder; nothing below it counts as left
 * @param retirePressureBarGauge below this a cylinder is not connected any more; not below the rest pressure; empty
 *     where the shop has no such rule
 * @param restLevelPercent what stays in a dewar
 * @param source where these come from, at most 200 characters
 */
public record Manifold(
        int sourcesAtOnce,
        BigDecimal restPressureBarGauge,
        Optional<BigDecimal> retirePressureBarGauge,
        BigDecimal restLevelPercent,
        String source) {

    /** Most sources that one manifold of a shop has; our own bound against a slip of the finger. */
    private static final int SOURCES_MAX = 12;

    /** Refuses a manifold without places, a rest that is not above zero, and a retiring pressure below the rest. */
    public Manifold {
        if (sourcesAtOnce < 1 || sourcesAtOnce > SOURCES_MAX) {
            throw new IllegalArgumentException("sources at once: 1 to " + SOURCES_MAX);
        }
        Amounts.positive("rest pressure", restPressureBarGauge);
        Amounts.between("rest level", restLevelPercent, "0", "50");
        if (retirePressureBarGauge.filter(bar -> bar.compareTo(restPressureBarGauge) < 0).isPresent()) {
            throw new IllegalArgumentException("retiring pressure: not below the rest pressure");
        }
        source = Syntax.text("source of the rest pressure", source, 200);
    }

    /** The pressure at which a cylinder counts as empty: it is left alone from there on. */
    public BigDecimal endPressureBarGauge() {
        return retirePressureBarGauge.orElse(restPressureBarGauge);
    }
}
