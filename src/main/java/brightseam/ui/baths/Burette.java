package brightseam.ui.baths;

import brightseam.bath.AcidTitration;
import brightseam.bath.BathAnalysis.Assumptions;
import brightseam.bath.FluorideBasis;
import brightseam.bath.FluorideReading;
import brightseam.bath.TitaniumAcidity;
import brightseam.line.AcidSample;
import brightseam.ui.desk.Numbers;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The readings of a pickle's titration as keyed.
 *
 * @param sample bath in the flask, mL
 * @param hydroxide its concentration, mol/L
 * @param used hydroxide used, mL
 * @param blank hydroxide that the flask takes without a sample, mL
 * @param fluoride how fluoride was found
 * @param titanium dissolved titanium by its own analysis, g/L
 * @param basis whether the fluoride method finds what titanium holds
 * @param acidity what titanium adds to the titration
 */
record Burette(String sample, String hydroxide, String used, String blank, Fluoride fluoride, String titanium,
        FluorideBasis basis, TitaniumAcidity acidity) {

    /** How fluoride can be found. */
    enum By {
        /** Titration with lanthanum nitrate. */
        LANTHANUM,
        /** Titration with thorium nitrate. */
        THORIUM,
        /** A fluoride electrode in a diluted sample. */
        ELECTRODE
    }

    /**
     * The reading of fluoride.
     *
     * @param reading titrant used in mL, or what the electrode's curve gives in mg/L
     * @param strength the titrant's mol/L; of no use for the electrode
     * @param sample bath that was taken, mL
     * @param diluted what it was made up to in mL; of no use for titrations
     */
    record Fluoride(By by, String reading, String strength, String sample, String diluted) {

        private FluorideReading read() {
            return switch (by) {
                case LANTHANUM -> titrated(FluorideReading.Titrant.LANTHANUM_NITRATE);
                case THORIUM -> titrated(FluorideReading.Titrant.THORIUM_NITRATE);
                case ELECTRODE -> FluorideReading.Electrode.ofMilligrams(number("fluoride read", reading),
                        number("sample for fluoride", sample), number("diluted to", diluted));
            };
        }

        private FluorideReading titrated(FluorideReading.Titrant titrant) {
            return new FluorideReading.Precipitation(titrant, number("fluoride titrant", strength),
                    number("fluoride titrant used", reading), number("sample for fluoride", sample));
        }
    }

    /**
     * What follows from them.
     *
     * @throws IllegalArgumentException naming the field whose number is missing or cannot be
     */
    Worked work() {
        AcidSample found = AcidSample.of(
                new AcidTitration(number("sample in the flask", sample), number("sodium hydroxide", hydroxide),
                        number("sodium hydroxide used", used), number("blank", blank)),
                fluoride.read(), new Assumptions(number("dissolved titanium", titanium), basis, acidity));
        return switch (found) {
            case AcidSample.Found good -> new Worked(good.values(), good.workings(), Optional.empty());
            case AcidSample.Contradiction bad ->
                new Worked(new TreeMap<>(), bad.workings(), Optional.of(words(bad.why())));
        };
    }

    private static String words(AcidSample.Contradiction.Why why) {
        return switch (why) {
            case LESS_FLUORIDE_THAN_TITANIUM_BINDS ->
                "The titanium alone would hold more fluoride than was found. Look at the fluoride reading, the titanium"
                        + " and what the method finds.";
            case LESS_ACID_THAN_FLUORIDE ->
                "Fluoride and titanium take more acid than was titrated. Look at both burettes and the samples.";
        };
    }

    private static double number(String label, String text) {
        return Numbers.decimal(label, text).doubleValue();
    }
}
