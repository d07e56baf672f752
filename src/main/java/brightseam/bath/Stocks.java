package brightseam.bath;

/**
 * The two concentrated acids that a shop makes a bath of.
 *
 * @param nitric its nitric acid
 * @param hydrofluoric its hydrofluoric acid
 */
public record Stocks(StockAcid nitric, StockAcid hydrofluoric) {

    /** Refuses one acid in the other's place. */
    public Stocks {
        if (nitric.acid() != Acid.NITRIC || hydrofluoric.acid() != Acid.HYDROFLUORIC) {
            throw new IllegalArgumentException("nitric acid first, then hydrofluoric");
        }
    }

    /** {@code content} in volume percent of these stocks. */
    public VolumeStrength strength(AcidContent content) {
        return new VolumeStrength(
                nitric.volumePercentOf(content.nitricGramsPerLitre()),
                hydrofluoric.volumePercentOf(content.hydrofluoricGramsPerLitre()));
    }

    /** {@code strength} in grams of pure acid a litre. */
    public AcidContent content(VolumeStrength strength) {
        return new AcidContent(
                nitric.bathGramsPerLitre(strength.nitricPercent()),
                hydrofluoric.bathGramsPerLitre(strength.hydrofluoricPercent()));
    }
}
