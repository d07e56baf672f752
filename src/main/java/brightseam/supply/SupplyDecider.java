package brightseam.supply;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.procedure.Surface;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Decides what a {@link SupplyCommand} does to a supply. */
public final class SupplyDecider {

    private SupplyDecider() {}

    /**
     * The events that follow from {@code command}, or every {@link SupplyRefusal} against it.
     *
     * @param today the day on the shop's wall
     */
    public static Decision<SupplyEvent> decide(Optional<Supply> supply, SupplyCommand command, LocalDate today) {
        return supply.map(known -> onKnown(known, command, today)).orElseGet(() -> onUnknown(command));
    }

    private static Decision<SupplyEvent> onUnknown(SupplyCommand command) {
        return command instanceof SupplyCommand.RegisterSupply first ? register(first)
                : Decision.refused(List.of(new SupplyRefusal.SupplyUnknown(command.supply())));
    }

    private static Decision<SupplyEvent> register(SupplyCommand.RegisterSupply c) {
        List<Surface> kept = c.mayTouch().stream().sorted().toList();
        return Rules.check()
                .refuseIf(kept.isEmpty(), () -> new SupplyRefusal.TouchesNothing(c.supply()))
                .refuseAll(kept.stream().filter(surface -> !c.type().mayTouch().contains(surface))
                        .map(surface -> new SupplyRefusal.TypeMayNotTouch(c.supply(), c.type().name(), surface))
                        .toList())
                .refuseIf(c.type().kind() == ContactKind.GAUGE && c.lastDay().isEmpty(),
                        () -> new SupplyRefusal.CalibrationMissing(c.supply()))
                .accept(new SupplyEvent.Registered(c.origin(), c.supply(), c.type().kind(), c.type().key(), c.title(),
                        c.lot(), c.maker(), c.lastDay(), kept));
    }

    private static Decision<SupplyEvent> onKnown(Supply supply, SupplyCommand command, LocalDate today) {
        Rules rules = Rules.check();
        if (!(command instanceof SupplyCommand.RegisterSupply)) {
            rules.refuseFor(Fitness.gone(supply));
        }
        return switch (command) {
            case SupplyCommand.RegisterSupply c -> rules
                    .refuseIf(true, () -> new SupplyRefusal.SupplyAlreadyRegistered(supply.id(), supply.title()))
                    .accept(List.of());
            case SupplyCommand.OpenSupply c -> rules
                    .refuseIf(supply.standing() == Standing.OPENED, () -> new SupplyRefusal.AlreadyOpen(supply.id()))
                    .accept(new SupplyEvent.Opened(c.origin(), supply.id()));
            case SupplyCommand.ReportContaminated c -> rules
                    .accept(new SupplyEvent.Contaminated(c.origin(), supply.id(), c.what()));
            case SupplyCommand.DeclareClean c -> rules
                    .refuseIf(!supply.isCleanable(), () -> new SupplyRefusal.NotCleanable(supply.id(), supply.kind()))
                    .refuseIf(supply.contamination().isEmpty(), () -> new SupplyRefusal.NotContaminated(supply.id()))
                    .accept(new SupplyEvent.MadeClean(c.origin(), supply.id(), c.how()));
            case SupplyCommand.Calibrate c -> rules
                    .refuseIf(!supply.isGauge(), () -> new SupplyRefusal.NoGauge(supply.id(), supply.kind()))
                    .refuseIf(today.isAfter(c.until()),
                            () -> new SupplyRefusal.CalibrationOverdue(supply.id(), supply.title(), c.until()))
                    .accept(new SupplyEvent.Calibrated(c.origin(), supply.id(), c.until(), c.certificate()));
            case SupplyCommand.UseUp c -> rules.accept(new SupplyEvent.UsedUp(c.origin(), supply.id()));
            case SupplyCommand.RetireSupply c -> rules
                    .accept(new SupplyEvent.Retired(c.origin(), supply.id(), c.reason()));
        };
    }
}
