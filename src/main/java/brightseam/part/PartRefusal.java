package brightseam.part;

import brightseam.kernel.PartNumber;
import brightseam.kernel.Refusal;
import java.math.BigDecimal;

/** The rules that stand against a {@link PartCommand}. */
public sealed interface PartRefusal extends Refusal {

    /** Which part. */
    PartNumber part();

    @Override
    default String code() {
        return switch (this) {
            case WeightDoesNotFit ignored -> "part-weight-does-not-fit";
        };
    }

    /** The scale says less than half or more than twice what the shape weighs in titanium: one of them is mistyped. */
    record WeightDoesNotFit(PartNumber part, BigDecimal weighedGrams, BigDecimal shapeGrams) implements PartRefusal {}
}
