package brightseam.demo.physics;

import java.time.Duration;

/**
 * Liquid argon: a level that falls by what is drawn and by what boils off, at the pressure that its builder keeps.
 * One litre of liquid gives 1394 kg/m³ (NIST, normal boiling point) over 1.6895 kg/m³ (ideal gas, 15 °C, one
 * atmosphere), 825 standard litres.
 */
public final class Dewar implements ArgonSource {

    /** Standard litres of gas from one litre of liquid. */
    public static final double EXPANSION = 1_394 / 1.6895;

    private static final double PERCENT = 100;
    private static final double MILLIS_PER_DAY = 86_400_000;

    private final double fullLitres;
    private final double builtBar;
    private final double boilOffPerDay;
    private double liquidLitres;

    /**
     * Full with {@code fullLitres} of liquid, holding {@code levelPercent} of it, kept at {@code builtBar} above the
     * atmosphere, losing {@code boilOffPerDay} of a full one each day whether drawn from or not.
     */
    public Dewar(double fullLitres, double levelPercent, double builtBar, double boilOffPerDay) {
        this.fullLitres = fullLitres;
        this.builtBar = builtBar;
        this.boilOffPerDay = boilOffPerDay;
        this.liquidLitres = fullLitres * levelPercent / PERCENT;
    }

    @Override
    public double draw(double standardLitres) {
        double drawn = Math.min(standardLitres / EXPANSION, liquidLitres);
        liquidLitres -= drawn;
        return drawn * EXPANSION;
    }

    @Override
    public void stand(Duration duration) {
        liquidLitres = Math.max(0,
                liquidLitres - boilOffPerDay * fullLitres * duration.toMillis() / MILLIS_PER_DAY);
    }

    @Override
    public double standardLitres() {
        return liquidLitres * EXPANSION;
    }

    @Override
    public double gaugeBar() {
        return liquidLitres > 0 ? builtBar : 0;
    }

    /** How full it is, 0 to 100. */
    public double levelPercent() {
        return PERCENT * liquidLitres / fullLitres;
    }
}
