package brightseam.material;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import java.util.List;
import java.util.Optional;

/** Decides what a {@link HeatCommand} does to a heat. */
public final class HeatDecider {

    private HeatDecider() {}

    /** The events that follow from {@code command}, or every {@link HeatRefusal} against it. */
    public static Decision<HeatEvent> decide(Optional<Heat> heat, HeatCommand command) {
        return heat.map(known -> onKnown(known, command)).orElseGet(() -> onUnknown(command));
    }

    private static Decision<HeatEvent> onUnknown(HeatCommand command) {
        return command instanceof HeatCommand.RegisterHeat first
                ? Decision.accepted(List.of(new HeatEvent.Registered(
                        first.origin(), first.heat(), first.grade(), first.form(), first.dimensions(), first.maker(),
                        first.certificateNumber(), first.receivedAt())))
                : Decision.refused(List.of(new HeatRefusal.HeatUnknown(command.heat())));
    }

    private static Decision<HeatEvent> onKnown(Heat heat, HeatCommand command) {
        return switch (command) {
            case HeatCommand.RegisterHeat ignored -> Decision.refused(
                    List.of(new HeatRefusal.HeatAlreadyRegistered(heat.id(), heat.certificateNumber())));
            case HeatCommand.PutOnHold put -> Rules.check()
                    .refuseIf(
                            heat.isOnHold(),
                            () -> new HeatRefusal.HeatOnHold(heat.id(), heat.holdReason().orElseThrow()))
                    .accept(new HeatEvent.HoldPut(put.origin(), heat.id(), put.reason()));
            case HeatCommand.ReleaseHold release -> Rules.check()
                    .refuseIf(!heat.isOnHold(), () -> new HeatRefusal.HeatNotOnHold(heat.id()))
                    .accept(new HeatEvent.HoldReleased(release.origin(), heat.id(), release.reason()));
        };
    }
}
