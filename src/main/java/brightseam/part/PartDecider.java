package brightseam.part;

import brightseam.bath.Density;
import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;

/** Decides what a {@link PartCommand} does to a part. */
public final class PartDecider {

    /** How far a weighed piece may be from its plain shape: holes, threads and bevels are not in the shape. */
    private static final double WEIGHT_FACTOR_MAX = 2;
    private static final Density TITANIUM = Density.ofGrade("9").orElseThrow();

    private PartDecider() {}

    /** The events that follow from {@code command}, or every {@link PartRefusal} against it. */
    public static Decision<PartEvent> decide(Optional<Part> part, PartCommand command) {
        return switch (command) {
            case PartCommand.GiveShape give -> give(part, give);
        };
    }

    private static Decision<PartEvent> give(Optional<Part> part, PartCommand.GiveShape command) {
        PartEvent given = PartEvent.given(
                command.origin(), command.part(), command.shape(), command.weighedGrams());
        boolean known = part.filter(Part.evolve(part, given)::equals).isPresent();
        return Rules.check()
                .refuseFor(command.weighedGrams().flatMap(weighed -> misfit(command, weighed)))
                .accept(known ? List.of() : List.of(given));
    }

    private static Optional<PartRefusal> misfit(PartCommand.GiveShape command, double weighedGrams) {
        double shapeGrams = 1000 * command.shape().massKilograms(TITANIUM);
        boolean fits = weighedGrams <= WEIGHT_FACTOR_MAX * shapeGrams && weighedGrams >= shapeGrams / WEIGHT_FACTOR_MAX;
        return fits ? Optional.empty() : Optional.of(new PartRefusal.WeightDoesNotFit(
                command.part(), rounded(weighedGrams), rounded(shapeGrams)));
    }

    private static BigDecimal rounded(double grams) {
        return BigDecimal.valueOf(grams).round(new MathContext(3));
    }
}
