package brightseam.supply;

import brightseam.procedure.Surface;
import brightseam.procedure.Use;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether a supply that was scanned may touch the pieces at a step. */
public final class Fitness {

    private Fitness() {}

    /**
     * Everything that stands against {@code supply} touching pieces; nothing where it is fit.
     *
     * @param asked what the step asks for
     * @param surface what the pieces are like there
     * @param today the day on the shop's wall: an item lasts to the end of its last day
     */
    public static List<SupplyRefusal> objections(Supply supply, List<Use> asked, Surface surface, LocalDate today) {
        List<SupplyRefusal> against = new ArrayList<>();
        if (use(supply, asked).isEmpty()) {
            against.add(new SupplyRefusal.WrongSupply(supply.id(), asked.stream().map(Use::type).sorted().toList(),
                    supply.kind(), supply.type()));
        }
        gone(supply).ifPresent(against::add);
        if (supply.isPast(today)) {
            LocalDate lastDay = supply.lastDay().orElseThrow();
            against.add(supply.isGauge()
                    ? new SupplyRefusal.CalibrationOverdue(supply.id(), supply.title(), lastDay)
                    : new SupplyRefusal.SupplyExpired(supply.id(), supply.title(), lastDay));
        }
        supply.contamination().ifPresent(what ->
                against.add(new SupplyRefusal.Contaminated(supply.id(), supply.title(), what)));
        if (!supply.mayTouch().contains(surface)) {
            against.add(new SupplyRefusal.MayNotTouch(supply.id(), supply.title(), surface));
        }
        return against;
    }

    /** Which of {@code asked} the supply is; empty where it is none of them. */
    public static Optional<Use> use(Supply supply, List<Use> asked) {
        return asked.stream().filter(use -> use.kind() == supply.kind() && use.type().equals(supply.type()))
                .findFirst();
    }

    /** Why it is not there any more, where it is not. */
    static Optional<SupplyRefusal> gone(Supply supply) {
        return switch (supply.standing()) {
            case UNOPENED, OPENED -> Optional.empty();
            case USED_UP -> Optional.of(new SupplyRefusal.SupplyUsedUp(supply.id(), supply.title()));
            case RETIRED -> Optional.of(new SupplyRefusal.SupplyRetired(supply.id(), supply.title()));
        };
    }
}
