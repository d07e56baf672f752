package brightseam.session;

import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a meter says now.
 *
 * @param meter its label
 * @param value its last reading in the unit of its quantity (ppm, or percent for the room); empty where it was never
 *     heard
 * @param at when that reading was taken
 * @param troubles why it cannot be relied on, as words such as {@code silent}; empty where it can
 * @param simulated whether the reading is made by a simulator
 */
public record MeterFact(SupplyId meter, Optional<BigDecimal> value, Optional<Moment> at, List<String> troubles,
        boolean simulated) {

    /** What a meter is called that was never heard. */
    static final List<String> UNHEARD = List.of("never-heard");

    /** What befalls a meter for parts per million in plain air: it stands at the end of its range. */
    private static final Set<String> USUAL_IN_AIR = Set.of("out-of-range", "frozen");

    /** Copies the list. */
    public MeterFact {
        troubles = List.copyOf(troubles);
    }

    /** What stands against relying on it once the air is gone; that it cannot measure air is no fault. */
    List<String> troublesInAir() {
        List<String> rest = troubles.stream().filter(trouble -> !USUAL_IN_AIR.contains(trouble)).toList();
        return rest.isEmpty() && value.isEmpty() ? UNHEARD : rest;
    }

    /** Whether there is a reading and nothing stands against it. */
    public boolean canBeUsed() {
        return value.isPresent() && troubles.isEmpty();
    }
}
