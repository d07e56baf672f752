package brightseam.session;

import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** What readings say of the gas in a chamber. */
public sealed interface Fitness {

    /**
     * Fit to weld.
     *
     * @param since the first reading of the unbroken run inside every limit
     * @param oxygenPpm the last reading of oxygen
     * @param moisturePpm the last reading of moisture, where one is asked for
     */
    record Fit(Moment since, BigDecimal oxygenPpm, Optional<BigDecimal> moisturePpm) implements Fitness {}

    /** Not fit, for at least one reason. */
    record NotFit(List<Refusal> reasons) implements Fitness {
        /** Copies the list and refuses an empty one. */
        public NotFit {
            reasons = List.copyOf(reasons);
            if (reasons.isEmpty()) {
                throw new IllegalArgumentException("not fit needs a reason");
            }
        }
    }

    /** Why it is not fit; empty where it is. */
    default List<Refusal> reasons() {
        return switch (this) {
            case Fit ignored -> List.of();
            case NotFit not -> not.reasons;
        };
    }
}
