package brightseam.bath;

import java.util.Objects;

/**
 * A concentrated acid as bought; what "volume percent" of a bath is counted in.
 *
 * @param acid which acid
 * @param weightPercent pure acid in 100 g of it
 * @param densityGramsPerMillilitre its density at room temperature
 */
public record StockAcid(Acid acid, double weightPercent, double densityGramsPerMillilitre) {

    /** 70 % nitric acid, 1.41 g/mL: the usual reagent (American Chemical Society reagent tables, from memory). */
    public static final StockAcid NITRIC_70 = new StockAcid(Acid.NITRIC, 70, 1.41);
    /** 48 % hydrofluoric acid, 1.15 g/mL: as reagent suppliers print it. */
    public static final StockAcid HYDROFLUORIC_48 = new StockAcid(Acid.HYDROFLUORIC, 48, 1.15);
    /** 60 % hydrofluoric acid, 1.21 g/mL: from memory; read the drum's own certificate. */
    public static final StockAcid HYDROFLUORIC_60 = new StockAcid(Acid.HYDROFLUORIC, 60, 1.21);

    /** Refuses a share that is not above 0 and at most 100 %, and a density from outside 1.0 to 1.6 g/mL. */
    public StockAcid {
        Objects.requireNonNull(acid, "acid");
        Quantity.positive("weight percent", weightPercent, 100);
        Quantity.between("density in g/mL", densityGramsPerMillilitre, 1.0, 1.6);
    }

    /** Pure acid in a litre of it: weight fraction x density x 1000. */
    public double gramsPerLitre() {
        return weightPercent / 100 * densityGramsPerMillilitre * 1000;
    }

    /** Moles of pure acid in a litre of it. */
    public double molesPerLitre() {
        return gramsPerLitre() / acid.gramsPerMole();
    }

    /** How many volume percent of this stock hold {@code bathGramsPerLitre} of pure acid. */
    public double volumePercentOf(double bathGramsPerLitre) {
        return 100 * bathGramsPerLitre / gramsPerLitre();
    }

    /** Pure acid in a litre of a bath that holds {@code volumePercent} of this stock. */
    public double bathGramsPerLitre(double volumePercent) {
        return volumePercent / 100 * gramsPerLitre();
    }
}
