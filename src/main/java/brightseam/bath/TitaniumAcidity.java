package brightseam.bath;

/**
 * How many acid equivalents each dissolved titanium adds to the titration with hydroxide.
 *
 * <p>Titanium stands in a nitric and hydrofluoric pickle as hexafluorotitanic acid, H2TiF6 (Dustou and others, J. Anal.
 * Sci. Methods Instrum. 7 (2017) 116-135, find that complexes of the dissolved metals give acid to the titration; Yan
 * and others, Phys. Test. Chem. Anal. B 54 (2018) 1435-1440, keep it whole with potassium nitrate). Which of these a
 * method does depends on its end point; it is an assumption that the analysis names.
 */
public enum TitaniumAcidity {
    /** It is not counted: for a fresh bath, or a method that was calibrated on spent ones. */
    NOT_COUNTED(0),
    /** The complex stays whole and gives its two protons: H2TiF6 + 2 NaOH = Na2TiF6 + 2 H2O. */
    COMPLEX_WHOLE(2),
    /** The complex is broken at the end point: H2TiF6 + 6 NaOH = Ti(OH)4 + 6 NaF + 2 H2O. */
    COMPLEX_BROKEN(6);

    private final int equivalentsPerTitanium;

    TitaniumAcidity(int equivalentsPerTitanium) {
        this.equivalentsPerTitanium = equivalentsPerTitanium;
    }

    /** Moles of hydroxide that one mole of titanium takes. */
    public int equivalentsPerTitanium() {
        return equivalentsPerTitanium;
    }
}
