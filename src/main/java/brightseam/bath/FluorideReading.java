package brightseam.bath;

import java.util.Objects;

/** One determination of fluoride in a bath; whether titanium's share is in it, the {@link FluorideBasis} says. */
public sealed interface FluorideReading {

    /** Fluoride in a litre of the bath, in mol/L. */
    double fluorideMolesPerLitre();

    /** How that came about. */
    Working working();

    /**
     * By a fluoride electrode in a buffered, diluted sample, from its calibration curve.
     *
     * @param readMolesPerLitre fluoride in the diluted sample
     * @param sampleMillilitres bath that was taken
     * @param dilutedMillilitres what it was made up to
     */
    record Electrode(double readMolesPerLitre, double sampleMillilitres, double dilutedMillilitres)
            implements FluorideReading {
        /** Refuses what is not above zero (a reading may be zero), and a dilution below the sample. */
        public Electrode {
            Quantity.notNegative("fluoride read in mol/L", readMolesPerLitre, 10);
            Quantity.positive("diluted to in mL", dilutedMillilitres, 1e5);
            Quantity.positive("sample in mL", sampleMillilitres, dilutedMillilitres);
        }

        /** A reading in milligrams of fluoride ion (18.998 g/mol) a litre. */
        public static Electrode ofMilligrams(
                double readMilligramsPerLitre, double sampleMillilitres, double dilutedMillilitres) {
            return new Electrode(readMilligramsPerLitre / 18_998, sampleMillilitres, dilutedMillilitres);
        }

        @Override
        public double fluorideMolesPerLitre() {
            return readMolesPerLitre * dilutedMillilitres / sampleMillilitres;
        }

        @Override
        public Working working() {
            return new Working("fluoride", "read x diluted to / sample = " + readMolesPerLitre + " mol/L x "
                    + dilutedMillilitres + " mL / " + sampleMillilitres + " mL", fluorideMolesPerLitre(), "mol/L");
        }
    }

    /** The salts that fluoride is titrated with. */
    enum Titrant {
        /** La(3+) + 3 F(-) gives LaF3; the end is found with a fluoride electrode. */
        LANTHANUM_NITRATE("La", 3),
        /** Th(4+) + 4 F(-) gives ThF4; the end is found with alizarin red S. */
        THORIUM_NITRATE("Th", 4);

        private final String symbol;
        private final int fluoridesPerMetal;

        Titrant(String symbol, int fluoridesPerMetal) {
            this.symbol = symbol;
            this.fluoridesPerMetal = fluoridesPerMetal;
        }

        /** How many fluoride ions one metal ion takes. */
        public int fluoridesPerMetal() {
            return fluoridesPerMetal;
        }
    }

    /**
     * By titration with a metal that precipitates fluoride.
     *
     * @param sampleMillilitres bath that was in the flask, counted before dilution
     */
    record Precipitation(
            Titrant titrant, double titrantMolesPerLitre, double titrantMillilitres, double sampleMillilitres)
            implements FluorideReading {
        /** Refuses what no burette or pipette gives. */
        public Precipitation {
            Objects.requireNonNull(titrant, "titrant");
            Quantity.positive("titrant in mol/L", titrantMolesPerLitre, 5);
            Quantity.notNegative("titrant in mL", titrantMillilitres, 1000);
            Quantity.positive("sample in mL", sampleMillilitres, 1000);
        }

        @Override
        public double fluorideMolesPerLitre() {
            return titrant.fluoridesPerMetal() * titrantMolesPerLitre * titrantMillilitres / sampleMillilitres;
        }

        @Override
        public Working working() {
            return new Working("fluoride", titrant.fluoridesPerMetal() + " x c(" + titrant.symbol + ") x V / sample = "
                    + titrant.fluoridesPerMetal() + " x " + titrantMolesPerLitre + " mol/L x " + titrantMillilitres
                    + " mL / " + sampleMillilitres + " mL", fluorideMolesPerLitre(), "mol/L");
        }
    }
}
