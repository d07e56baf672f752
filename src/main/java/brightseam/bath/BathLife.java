package brightseam.bath;

import java.util.OptionalDouble;

/** How much longer a bath takes loads of one kind before its dissolved metal passes a limit. */
public sealed interface BathLife {

    /** What is counted no further: more loads than any bath sees. */
    long LOADS_MAX = 1_000_000_000;

    /**
     * It takes this much more.
     *
     * @param loads whole loads, at most {@link #LOADS_MAX}; during the last of them the bath is at or below the limit
     * @param areaSquareMetres all of their surface
     * @param days at the pace that was given; empty where none was
     */
    record Left(long loads, double areaSquareMetres, OptionalDouble days) implements BathLife {}

    /** Not one more load: it would hold {@code gramsPerLitreDuring}, above the limit. */
    record Spent(double gramsPerLitreDuring) implements BathLife {}

    /** Drag-out or loads without loss keep it below the limit for ever, at no more than this in the long run. */
    record Endless(double gramsPerLitreAtMost) implements BathLife {}

    /**
     * The life of {@code bath} under loads like {@code load}.
     *
     * <p>Each load adds g/V and then takes the share f = d/V away, so that the bath nears (g/V)(1-f)/f; without
     * drag-out it grows by g/V for ever. Counted in closed form, then corrected by at most one load where rounding
     * fell on the wrong side.
     *
     * @param limitGramsPerLitre the most dissolved metal; the procedure's or the shop's, never a constant
     * @param loadsPerDay the pace, above zero, if known
     */
    static BathLife of(
            DissolvedMetal bath, DissolvedMetal.Load load, double limitGramsPerLitre, OptionalDouble loadsPerDay) {
        Quantity.positive("limit in g/L", limitGramsPerLitre, 1000);
        loadsPerDay.ifPresent(pace -> Quantity.positive("loads a day", pace, 1e6));
        double first = bath.during(load).gramsPerLitre();
        if (first > limitGramsPerLitre) {
            return new Spent(first);
        }
        double share = bath.dragOutShare(load);
        double gain = load.metalGrams() / bath.volumeLitres();
        double highest = gain == 0 ? first : share == 0 ? Double.POSITIVE_INFINITY : Math.max(first, gain / share);
        if (highest <= limitGramsPerLitre) {
            return new Endless(highest);
        }
        long loads = count(first, gain, share, limitGramsPerLitre);
        return new Left(loads, loads * load.areaSquareMetres(), loadsPerDay.isPresent()
                ? OptionalDouble.of(loads / loadsPerDay.getAsDouble())
                : OptionalDouble.empty());
    }

    /** How many loads until the peak, {@code first} during the first of them, has passed {@code limit}, less one. */
    private static long count(double first, double gain, double share, double limit) {
        double further = share == 0
                ? (limit - first) / gain
                : Math.log((gain / share - limit) / (gain / share - first)) / Math.log1p(-share);
        if (further >= LOADS_MAX) {
            return LOADS_MAX;
        }
        long loads = 1 + (long) Math.floor(further);
        if (peak(loads, first, gain, share) > limit) {
            return loads - 1;
        }
        return peak(loads + 1, first, gain, share) <= limit ? loads + 1 : loads;
    }

    /** The metal during the {@code load}-th load from now. */
    private static double peak(long load, double first, double gain, double share) {
        if (share == 0) {
            return first + (load - 1) * gain;
        }
        double steady = gain / share;
        return steady - (steady - first) * Math.pow(1 - share, load - 1);
    }
}
