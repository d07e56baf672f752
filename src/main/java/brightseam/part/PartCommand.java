package brightseam.part;

import brightseam.bath.Shape;
import brightseam.kernel.Origin;
import brightseam.kernel.PartNumber;
import java.util.Optional;

/** What can be asked of one part. */
public sealed interface PartCommand {

    /** Which part. */
    PartNumber part();

    /** When, by whom and where. */
    Origin origin();

    /**
     * Gives a part its shape, for the first time or anew.
     *
     * @param weighedGrams what one piece weighs on a scale; empty where it was not weighed
     */
    record GiveShape(PartNumber part, Shape shape, Optional<Double> weighedGrams, Origin origin)
            implements PartCommand {
        /** Refuses a weight that is not above zero and below 10 t. */
        public GiveShape {
            if (weighedGrams.filter(grams -> !(grams > 0 && grams < 1e7)).isPresent()) {
                throw new IllegalArgumentException("weight of a piece in g: above 0");
            }
        }
    }
}
