package brightseam.part;

import brightseam.bath.Shape;
import brightseam.kernel.Origin;
import brightseam.kernel.PartNumber;
import java.util.Optional;

/** What happened to one part. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface PartEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which part. */
    PartNumber part();

    /** The shape that it has from now on. */
    Shape shape();

    /** What one piece weighs on a scale, where it was weighed. */
    Optional<Double> weighedGrams();

    /** It is a tube. */
    record TubeGiven(Origin origin, PartNumber part, Shape.Tube shape, Optional<Double> weighedGrams)
            implements PartEvent {}

    /** It is a round bar. */
    record BarGiven(Origin origin, PartNumber part, Shape.Bar shape, Optional<Double> weighedGrams)
            implements PartEvent {}

    /** It is a plate. */
    record PlateGiven(Origin origin, PartNumber part, Shape.Plate shape, Optional<Double> weighedGrams)
            implements PartEvent {}

    /** It is of another shape, measured on its drawing. */
    record FittingGiven(Origin origin, PartNumber part, Shape.Fitting shape, Optional<Double> weighedGrams)
            implements PartEvent {}

    /** The event that gives {@code part} a {@code shape}. */
    static PartEvent given(Origin origin, PartNumber part, Shape shape, Optional<Double> weighedGrams) {
        return switch (shape) {
            case Shape.Tube tube -> new TubeGiven(origin, part, tube, weighedGrams);
            case Shape.Bar bar -> new BarGiven(origin, part, bar, weighedGrams);
            case Shape.Plate plate -> new PlateGiven(origin, part, plate, weighedGrams);
            case Shape.Fitting fitting -> new FittingGiven(origin, part, fitting, weighedGrams);
        };
    }
}
