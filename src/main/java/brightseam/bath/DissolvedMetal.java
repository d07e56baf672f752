package brightseam.bath;

/**
 * Metal in solution in a bath. All dissolved metal counts as titanium: the few percent of aluminium and vanadium in an
 * alloy make the number too large rather than too small.
 *
 * @param volumeLitres the bath's volume, kept by topping up after drag-out
 * @param gramsPerLitre dissolved metal
 */
public record DissolvedMetal(double volumeLitres, double gramsPerLitre) {

    /** Refuses a bath of nothing or of more than 1000 m3, and more metal than 1000 g/L. */
    public DissolvedMetal {
        Quantity.positive("volume in L", volumeLitres, 1e6);
        Quantity.notNegative("dissolved metal in g/L", gramsPerLitre, 1000);
    }

    /**
     * What one load does to a bath.
     *
     * @param areaSquareMetres what of it is wetted
     * @param metalGrams what dissolves from it; see {@link Removal#massGrams}
     * @param dragOutLitres liquid that leaves with it, replaced by fresh acid or water; zero where that is neglected
     */
    public record Load(double areaSquareMetres, double metalGrams, double dragOutLitres) {
        /** Refuses what is below zero. */
        public Load {
            Quantity.notNegative("area in m2", areaSquareMetres, 1e5);
            Quantity.notNegative("metal in g", metalGrams, 1e7);
            Quantity.notNegative("drag-out in L", dragOutLitres, 1e6);
        }

        /** A load of {@code area} that loses {@code removal} everywhere. */
        public static Load of(WettedArea area, Removal removal, Density density, double dragOutLitres) {
            double squareMetres = area.totalSquareMetres();
            return new Load(squareMetres, removal.massGrams(squareMetres, density), dragOutLitres);
        }
    }

    /** The bath while {@code load} is still in it: its metal dissolved, nothing dragged out yet. */
    public DissolvedMetal during(Load load) {
        return new DissolvedMetal(volumeLitres, gramsPerLitre + load.metalGrams() / volumeLitres);
    }

    /**
     * The bath after {@code load} left it with its drag-out and the volume was topped up.
     *
     * @throws IllegalArgumentException where the drag-out is more than the bath
     */
    public DissolvedMetal after(Load load) {
        return new DissolvedMetal(volumeLitres, during(load).gramsPerLitre() * (1 - dragOutShare(load)));
    }

    /** The metal in it, in grams. */
    public double grams() {
        return volumeLitres * gramsPerLitre;
    }

    /** What part of the bath leaves with {@code load}. */
    double dragOutShare(Load load) {
        return Quantity.notNegative("drag-out as a share of the bath", load.dragOutLitres() / volumeLitres, 1);
    }
}
