package brightseam.bath;

import java.util.stream.DoubleStream;

/**
 * What to add to a bath so that it has the strength that is wanted.
 *
 * <p>Counted in litres of stock: what is in the bath stays in it, so that for each acid and for the rest (water, and
 * whatever is dissolved) the end is the beginning plus the addition. Volumes are taken as additive; mixing acids with
 * water shrinks by a few percent (from memory), so a bath is made up short, mixed, and filled to its level last.
 * Additions are made by people who may do so, acid into water, as the safety data sheet says.
 */
public sealed interface MakeUp {

    /**
     * Draw off, then add these.
     *
     * @param drawOffLitres to be taken out of the mixed bath first; zero where nothing has to go
     * @param nitricLitres of nitric stock
     * @param hydrofluoricLitres of hydrofluoric stock
     * @param waterLitres of water
     * @param finalLitres the bath afterwards
     * @param keptShare how much of what is dissolved in the bath stays, as a share of its concentration before
     */
    record Additions(
            double drawOffLitres,
            double nitricLitres,
            double hydrofluoricLitres,
            double waterLitres,
            double finalLitres,
            double keptShare)
            implements MakeUp {}

    /** No mixture of these stocks is that strong: the stocks alone would take {@code percentOfVolume} of it. */
    record TargetAboveStock(double percentOfVolume) implements MakeUp {}

    /**
     * It cannot be done by adding alone: the bath would come to {@code litresNeeded}, above the level.
     *
     * @param litresNeeded infinite where an acid would have to go altogether
     * @param drawOffLitresFirst the least that has to be drawn off first
     */
    record WouldOverflow(double litresNeeded, double levelLitres, double drawOffLitresFirst) implements MakeUp {}

    /**
     * A bath now, in volume percent of the stocks that will be added.
     *
     * @param litres what is in the tank
     */
    record Now(double litres, VolumeStrength strength) {
        /** Refuses less than nothing, more than 1000 m3, and more stock than bath. */
        public Now {
            Quantity.notNegative("bath in L", litres, 1e6);
            if (rest(strength) < -1e-9) {
                throw new IllegalArgumentException("the bath is stronger than its stocks: " + strength);
            }
        }
    }

    /**
     * The additions that bring {@code now} to {@code target} at {@code levelLitres}.
     *
     * @param levelLitres the bath's volume afterwards
     * @param mayDrawOff whether some of the bath may be taken out first; then the least that helps is taken out
     */
    static MakeUp plan(Now now, VolumeStrength target, double levelLitres, boolean mayDrawOff) {
        Quantity.positive("level in L", levelLitres, 1e6);
        if (rest(target) < 0) {
            return new TargetAboveStock(target.nitricPercent() + target.hydrofluoricPercent());
        }
        double growth = growth(now.strength(), target);
        double kept = Math.min(now.litres(), levelLitres / growth);
        double drawOff = now.litres() - kept < 1e-9 * levelLitres ? 0 : now.litres() - kept;
        if (drawOff > 0 && !mayDrawOff) {
            return new WouldOverflow(now.litres() * growth, levelLitres, drawOff);
        }
        return additions(now, target, levelLitres, drawOff);
    }

    private static Additions additions(Now now, VolumeStrength target, double level, double drawOff) {
        double kept = now.litres() - drawOff;
        VolumeStrength before = now.strength();
        return new Additions(
                drawOff,
                added(level * target.nitricPercent() - kept * before.nitricPercent()),
                added(level * target.hydrofluoricPercent() - kept * before.hydrofluoricPercent()),
                added(level * rest(target) - kept * rest(before)),
                level,
                kept / level);
    }

    /** Litres from percent; what rounding leaves below zero is nothing. */
    private static double added(double percentLitres) {
        return Math.max(0, percentLitres / 100);
    }

    /** How many times its volume a bath has to become before none of its parts is too much; at least 1. */
    private static double growth(VolumeStrength now, VolumeStrength target) {
        return DoubleStream.of(
                        1,
                        times(now.nitricPercent(), target.nitricPercent()),
                        times(now.hydrofluoricPercent(), target.hydrofluoricPercent()),
                        times(rest(now), rest(target)))
                .max()
                .orElseThrow();
    }

    private static double times(double now, double target) {
        return now <= 1e-12 ? 1 : now / target;
    }

    private static double rest(VolumeStrength strength) {
        return 100 - strength.nitricPercent() - strength.hydrofluoricPercent();
    }
}
