package brightseam.bath;

/**
 * Surface that a bath touches.
 *
 * @param outsideSquareMetres outward faces
 * @param insideSquareMetres bores that the bath reaches
 */
public record WettedArea(double outsideSquareMetres, double insideSquareMetres) {

    /** Refuses what is below zero or above 100 000 m2. */
    public WettedArea {
        Quantity.notNegative("outside area in m2", outsideSquareMetres, 1e5);
        Quantity.notNegative("inside area in m2", insideSquareMetres, 1e5);
    }

    /** Outside and inside together, in square metres. */
    public double totalSquareMetres() {
        return outsideSquareMetres + insideSquareMetres;
    }

    /** The same for {@code pieces} pieces, at least none. */
    public WettedArea times(int pieces) {
        Quantity.notNegative("pieces", pieces, 1e6);
        return new WettedArea(pieces * outsideSquareMetres, pieces * insideSquareMetres);
    }

    /** This and {@code other}. */
    public WettedArea plus(WettedArea other) {
        return new WettedArea(
                outsideSquareMetres + other.outsideSquareMetres, insideSquareMetres + other.insideSquareMetres);
    }
}
