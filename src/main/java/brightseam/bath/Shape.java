package brightseam.bath;

import java.util.Objects;

/**
 * A part as solid geometry: what of it a bath wets, and how much metal it is.
 *
 * <p>Faces are plain: no chamfers, holes, roughness or threads. A part with such features is a {@link Fitting}, whose
 * areas come from its drawing. Formulae are those of any geometry book.
 */
public sealed interface Shape {

    /** The longest length of any part: 20 m, more than any bath holds. */
    double LENGTH_MILLIMETRES_MAX = 20_000;

    /** Surface that faces outwards, ends and edges included, in square millimetres. */
    double outsideAreaSquareMillimetres();

    /** Surface of a bore that a bath can reach, in square millimetres; zero where there is none. */
    double insideAreaSquareMillimetres();

    /** Metal, in cubic millimetres. */
    double volumeCubicMillimetres();

    /** What the bath wets. */
    default WettedArea wettedArea() {
        return new WettedArea(outsideAreaSquareMillimetres() / 1e6, insideAreaSquareMillimetres() / 1e6);
    }

    /** Mass of one piece in kilograms: volume times {@code density}. */
    default double massKilograms(Density density) {
        return volumeCubicMillimetres() * density.gramsPerCubicCentimetre() / 1e6;
    }

    /**
     * A straight round tube, cut square.
     *
     * @param outsideDiameterMillimetres over the wall
     * @param wallMillimetres thickness of the wall, below the radius
     * @param lengthMillimetres from end to end
     * @param bore whether the bath reaches the inside; the annular ends count as outside in both cases
     */
    record Tube(double outsideDiameterMillimetres, double wallMillimetres, double lengthMillimetres, Bore bore)
            implements Shape {
        /** Refuses what is not above zero, longer than 20 m, or a wall that leaves no bore. */
        public Tube {
            Quantity.positive("outside diameter in mm", outsideDiameterMillimetres, LENGTH_MILLIMETRES_MAX);
            Quantity.positive("wall in mm", wallMillimetres, LENGTH_MILLIMETRES_MAX);
            Quantity.positive("length in mm", lengthMillimetres, LENGTH_MILLIMETRES_MAX);
            if (2 * wallMillimetres >= outsideDiameterMillimetres) {
                throw new IllegalArgumentException("wall below the radius: " + wallMillimetres + " mm in a diameter of "
                        + outsideDiameterMillimetres + " mm leaves no bore");
            }
            Objects.requireNonNull(bore, "bore");
        }

        /** The bore's diameter in millimetres. */
        public double insideDiameterMillimetres() {
            return outsideDiameterMillimetres - 2 * wallMillimetres;
        }

        @Override
        public double outsideAreaSquareMillimetres() {
            return Math.PI * outsideDiameterMillimetres * lengthMillimetres + 2 * sectionSquareMillimetres();
        }

        @Override
        public double insideAreaSquareMillimetres() {
            return switch (bore) {
                case VENTED -> Math.PI * insideDiameterMillimetres() * lengthMillimetres;
                case CLOSED -> 0;
            };
        }

        @Override
        public double volumeCubicMillimetres() {
            return sectionSquareMillimetres() * lengthMillimetres;
        }

        private double sectionSquareMillimetres() {
            return Math.PI * (outsideDiameterMillimetres - wallMillimetres) * wallMillimetres;
        }
    }

    /** A round bar, cut square: {@code diameterMillimetres} by {@code lengthMillimetres}. */
    record Bar(double diameterMillimetres, double lengthMillimetres) implements Shape {
        /** Refuses what is not above zero or longer than 20 m. */
        public Bar {
            Quantity.positive("diameter in mm", diameterMillimetres, LENGTH_MILLIMETRES_MAX);
            Quantity.positive("length in mm", lengthMillimetres, LENGTH_MILLIMETRES_MAX);
        }

        @Override
        public double outsideAreaSquareMillimetres() {
            return Math.PI * diameterMillimetres * (lengthMillimetres + diameterMillimetres / 2);
        }

        @Override
        public double insideAreaSquareMillimetres() {
            return 0;
        }

        @Override
        public double volumeCubicMillimetres() {
            return Math.PI / 4 * diameterMillimetres * diameterMillimetres * lengthMillimetres;
        }
    }

    /** A rectangular plate; both faces and all four edges are wetted. */
    record Plate(double lengthMillimetres, double widthMillimetres, double thicknessMillimetres) implements Shape {
        /** Refuses what is not above zero or longer than 20 m. */
        public Plate {
            Quantity.positive("length in mm", lengthMillimetres, LENGTH_MILLIMETRES_MAX);
            Quantity.positive("width in mm", widthMillimetres, LENGTH_MILLIMETRES_MAX);
            Quantity.positive("thickness in mm", thicknessMillimetres, LENGTH_MILLIMETRES_MAX);
        }

        @Override
        public double outsideAreaSquareMillimetres() {
            return 2 * (lengthMillimetres * widthMillimetres
                    + lengthMillimetres * thicknessMillimetres
                    + widthMillimetres * thicknessMillimetres);
        }

        @Override
        public double insideAreaSquareMillimetres() {
            return 0;
        }

        @Override
        public double volumeCubicMillimetres() {
            return lengthMillimetres * widthMillimetres * thicknessMillimetres;
        }
    }

    /**
     * A part of any other shape, measured on its drawing.
     *
     * @param outsideAreaSquareCentimetres every face that looks outwards
     * @param insideAreaSquareCentimetres bores that the bath reaches; zero where there are none
     * @param volumeCubicCentimetres its metal
     */
    record Fitting(
            double outsideAreaSquareCentimetres,
            double insideAreaSquareCentimetres,
            double volumeCubicCentimetres)
            implements Shape {
        /** Refuses areas above 100 m2, a volume above 1 m3, and a volume that its area cannot enclose. */
        public Fitting {
            Quantity.positive("outside area in cm2", outsideAreaSquareCentimetres, 1e6);
            Quantity.notNegative("inside area in cm2", insideAreaSquareCentimetres, 1e6);
            Quantity.positive("volume in cm3", volumeCubicCentimetres, 1e6);
            double sphere = Math.pow(outsideAreaSquareCentimetres, 1.5) / (6 * Math.sqrt(Math.PI));
            if (volumeCubicCentimetres > sphere * (1 + 1e-9)) {
                throw new IllegalArgumentException("an outside of " + outsideAreaSquareCentimetres
                        + " cm2 encloses at most " + sphere + " cm3 (a sphere), not " + volumeCubicCentimetres);
            }
        }

        @Override
        public double outsideAreaSquareMillimetres() {
            return 100 * outsideAreaSquareCentimetres;
        }

        @Override
        public double insideAreaSquareMillimetres() {
            return 100 * insideAreaSquareCentimetres;
        }

        @Override
        public double volumeCubicMillimetres() {
            return 1000 * volumeCubicCentimetres;
        }
    }
}
