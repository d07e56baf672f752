package brightseam.bath;

import java.util.ArrayList;
import java.util.List;

/**
 * Nitric and free hydrofluoric acid from a titration of all acid and a determination of fluoride: general chemistry, as
 * makers of titrators describe it for etching baths (total acid with hydroxide, fluoride with lanthanum nitrate or an
 * electrode, nitric acid by difference). The shop's own method and its safety data sheets go first.
 */
public sealed interface BathAnalysis {

    /** Grams in a mole of titanium. */
    double TITANIUM_GRAMS_PER_MOLE = 47.867;

    /** Fluorides that one titanium binds, as hexafluorotitanate. */
    int FLUORIDES_PER_TITANIUM = 6;

    /** How it came about, line by line. */
    List<Working> workings();

    /** Both acids. */
    record Found(AcidContent content, List<Working> workings) implements BathAnalysis {
        /** Copies the list. */
        public Found {
            workings = List.copyOf(workings);
        }
    }

    /** Titanium would hold more fluoride than there is: {@code molesPerLitre} too much. Analyse again. */
    record LessFluorideThanTitaniumBinds(double molesPerLitre, List<Working> workings) implements BathAnalysis {
        /** Copies the list. */
        public LessFluorideThanTitaniumBinds {
            workings = List.copyOf(workings);
        }
    }

    /** Free fluoride and titanium take more acid than was titrated: {@code molesPerLitre} too much. Analyse again. */
    record LessAcidThanFluoride(double molesPerLitre, List<Working> workings) implements BathAnalysis {
        /** Copies the list. */
        public LessAcidThanFluoride {
            workings = List.copyOf(workings);
        }
    }

    /**
     * What the shop's method assumes of the titanium in a bath.
     *
     * @param titaniumGramsPerLitre dissolved titanium, by its own analysis; zero for a fresh bath
     * @param fluoride what the fluoride determination finds
     * @param acidity what titanium adds to the titration
     */
    record Assumptions(double titaniumGramsPerLitre, FluorideBasis fluoride, TitaniumAcidity acidity) {

        /** A bath that nothing has dissolved in. */
        public static final Assumptions FRESH_BATH =
                new Assumptions(0, FluorideBasis.FREE, TitaniumAcidity.NOT_COUNTED);

        /** Refuses titanium below zero or above 1000 g/L. */
        public Assumptions {
            Quantity.notNegative("titanium in g/L", titaniumGramsPerLitre, 1000);
        }

        double titaniumMolesPerLitre() {
            return titaniumGramsPerLitre / TITANIUM_GRAMS_PER_MOLE;
        }

        private double boundFluoride() {
            return fluoride == FluorideBasis.TOTAL ? FLUORIDES_PER_TITANIUM * titaniumMolesPerLitre() : 0;
        }
    }

    /** Works out both acids, or says which of the two determinations contradicts the other. */
    static BathAnalysis of(AcidTitration acid, FluorideReading fluoride, Assumptions assumed) {
        List<Working> workings = new ArrayList<>(List.of(acid.working(), fluoride.working()));
        workings.add(new Working("titanium", assumed.titaniumGramsPerLitre() + " g/L / " + TITANIUM_GRAMS_PER_MOLE
                + " g/mol", assumed.titaniumMolesPerLitre(), "mol/L"));
        double free = fluoride.fluorideMolesPerLitre() - assumed.boundFluoride();
        workings.add(new Working("free HF", assumed.fluoride() == FluorideBasis.TOTAL
                ? "fluoride - " + FLUORIDES_PER_TITANIUM + " x titanium"
                : "fluoride; the method does not find what titanium binds", free, "mol/L"));
        if (free < 0) {
            return new LessFluorideThanTitaniumBinds(-free, workings);
        }
        int equivalents = assumed.acidity().equivalentsPerTitanium();
        double nitric = acid.equivalentsPerLitre() - free - equivalents * assumed.titaniumMolesPerLitre();
        workings.add(new Working("HNO3", "total acid - free HF - " + equivalents + " x titanium", nitric, "mol/L"));
        if (nitric < 0) {
            return new LessAcidThanFluoride(-nitric, workings);
        }
        AcidContent content =
                new AcidContent(nitric * Acid.NITRIC.gramsPerMole(), free * Acid.HYDROFLUORIC.gramsPerMole());
        workings.add(inGrams(Acid.NITRIC, content.nitricGramsPerLitre()));
        workings.add(inGrams(Acid.HYDROFLUORIC, content.hydrofluoricGramsPerLitre()));
        return new Found(content, workings);
    }

    private static Working inGrams(Acid acid, double gramsPerLitre) {
        return new Working(acid.formula(), acid.formula() + " x " + acid.gramsPerMole() + " g/mol", gramsPerLitre,
                "g/L");
    }
}
