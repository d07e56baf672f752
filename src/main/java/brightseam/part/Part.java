package brightseam.part;

import brightseam.bath.Density;
import brightseam.bath.Shape;
import brightseam.bath.WettedArea;
import brightseam.kernel.PartNumber;
import java.util.Optional;

/**
 * One piece of a part.
 *
 * @param number its number on the drawing
 * @param shape its geometry, by the drawing
 * @param weighedGrams what one piece weighs on a scale, where it was weighed; goes before what the shape would weigh
 */
public record Part(PartNumber number, Shape shape, Optional<Double> weighedGrams) {

    /** The part after {@code event}; the shape that is given replaces the one before. */
    public static Part evolve(Optional<Part> before, PartEvent event) {
        return new Part(event.part(), event.shape(), event.weighedGrams());
    }

    /** What a bath wets of {@code pieces} pieces. */
    public WettedArea wettedArea(int pieces) {
        return shape.wettedArea().times(pieces);
    }

    /** Mass of {@code pieces} pieces in kilograms; empty where neither a scale nor the metal's density tells it. */
    public Optional<Double> massKilograms(int pieces, Optional<Density> density) {
        return weighedGrams.map(grams -> grams / 1000)
                .or(() -> density.map(shape::massKilograms))
                .map(one -> pieces * one);
    }
}
