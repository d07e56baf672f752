package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.procedure.BinClass;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What has to hold of the pieces themselves when they go into the transfer lock. */
final class PassIn {

    private PassIn() {}

    static List<TravellerRefusal> objections(Traveller traveller, Procedure procedure, Step step, Moment now) {
        List<TravellerRefusal> refusals = new ArrayList<>();
        Duration needed = procedure.window().passInMargin();
        if (traveller.window() instanceof Window.Open open) {
            Duration left = open.remaining(now);
            if (left.compareTo(needed) < 0) {
                refusals.add(new TravellerRefusal.WindowTooShort(left, needed));
            }
        } else {
            refusals.add(new TravellerRefusal.WindowNotOpen(step.id()));
        }
        traveller.placement().filter(where -> !where.closed())
                .ifPresent(where -> refusals.add(new TravellerRefusal.BinNotClosed(where.bin(), where.binClass())));
        if (new BinRules(traveller, procedure).unfitFor(step).isEmpty()) {
            notClean(traveller, step).ifPresent(refusals::add);
        }
        return refusals;
    }

    /** Whatever the step's own classes are: into the lock go clean bins and bags only. */
    private static Optional<TravellerRefusal> notClean(Traveller traveller, Step step) {
        List<BinClass> wanted = BinRules.cleanOf(step);
        return traveller.placement()
                .map(where -> where.binClass().isClean() ? Optional.<TravellerRefusal>empty()
                        : Optional.<TravellerRefusal>of(new TravellerRefusal.WrongBinClass(
                                where.bin(), where.binClass(), wanted)))
                .orElseGet(() -> Optional.of(new TravellerRefusal.InNoBin(wanted)));
    }
}
