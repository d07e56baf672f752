package brightseam.bath;

/**
 * One titration of all acid in a sample with sodium hydroxide, to phenolphthalein or to a pH that the shop's method
 * names: moles of acid = c x V.
 *
 * @param sampleMillilitres bath that was taken, counted before it was diluted for the flask
 * @param hydroxideMolesPerLitre the titrant's concentration, as standardised
 * @param hydroxideMillilitres titrant used
 * @param blankMillilitres titrant that the same flask used without a sample
 */
public record AcidTitration(
        double sampleMillilitres,
        double hydroxideMolesPerLitre,
        double hydroxideMillilitres,
        double blankMillilitres) {

    /** Refuses what no burette or pipette gives, and a blank above the titration. */
    public AcidTitration {
        Quantity.positive("sample in mL", sampleMillilitres, 1000);
        Quantity.positive("hydroxide in mol/L", hydroxideMolesPerLitre, 20);
        Quantity.notNegative("hydroxide in mL", hydroxideMillilitres, 1000);
        Quantity.notNegative("blank in mL", blankMillilitres, hydroxideMillilitres);
    }

    /** Acid equivalents in a litre of the bath, in mol/L. */
    public double equivalentsPerLitre() {
        return hydroxideMolesPerLitre * (hydroxideMillilitres - blankMillilitres) / sampleMillilitres;
    }

    Working working() {
        return new Working("total acid", "c(NaOH) x V / sample = " + hydroxideMolesPerLitre + " mol/L x ("
                + hydroxideMillilitres + " - " + blankMillilitres + ") mL / " + sampleMillilitres + " mL",
                equivalentsPerLitre(), "mol/L");
    }
}
