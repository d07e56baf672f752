package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.procedure.Procedure;
import brightseam.procedure.StepKind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** What has to hold of the pieces themselves when they go into the transfer lock. */
final class PassIn {

    private PassIn() {}

    static List<TravellerRefusal> objections(Traveller traveller, Procedure procedure, Moment now) {
        List<TravellerRefusal> refusals = new ArrayList<>();
        Duration needed = procedure.window().passInMargin();
        if (traveller.window() instanceof Window.Open open) {
            Duration left = open.remaining(now);
            if (left.compareTo(needed) < 0) {
                refusals.add(new TravellerRefusal.WindowTooShort(left, needed));
            }
        } else {
            procedure.steps().stream().filter(step -> step.kind() == StepKind.PASS_IN).findFirst()
                    .ifPresent(step -> refusals.add(new TravellerRefusal.WindowNotOpen(step.id())));
        }
        traveller.placement().filter(where -> !where.closed())
                .ifPresent(where -> refusals.add(new TravellerRefusal.BinNotClosed(where.bin(), where.binClass())));
        return refusals;
    }
}
