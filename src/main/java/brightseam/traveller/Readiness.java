package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.procedure.BinClass;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Answers what a traveller lacks before it can be passed in. */
public final class Readiness {

    private Readiness() {}

    /** Everything that is missing at {@code now}; empty where the traveller is ready, or is past the lock. */
    public static List<Missing> missing(Traveller traveller, Procedure procedure, Moment now) {
        if (traveller.phase() != Phase.ACTIVE) {
            return List.of();
        }
        List<Missing> missing = new ArrayList<>(unsigned(traveller, procedure));
        if (traveller.isInQuarantine()) {
            missing.add(new Missing.Quarantine(
                    traveller.openNonconformances().stream().map(Nonconformance::number).toList()));
        }
        window(traveller, procedure, now).ifPresent(missing::add);
        bin(traveller).ifPresent(missing::add);
        return missing;
    }

    /** Whether the traveller waits for the transfer lock with nothing missing. */
    public static boolean isReady(Traveller traveller, Procedure procedure, Moment now) {
        return traveller.phase() == Phase.ACTIVE && missing(traveller, procedure, now).isEmpty();
    }

    private static List<Missing> unsigned(Traveller traveller, Procedure procedure) {
        List<Missing> missing = new ArrayList<>();
        for (Step step : procedure.steps()) {
            if (step.kind() == StepKind.PASS_IN) {
                break;
            }
            if (!traveller.isSigned(step.id())) {
                missing.add(step.isInspectionPoint() ? new Missing.NotStamped(step.id())
                        : new Missing.StepNotSigned(step.id()));
            }
        }
        return missing;
    }

    private static Optional<Missing> window(Traveller traveller, Procedure procedure, Moment now) {
        if (!(traveller.window() instanceof Window.Open open)) {
            return Optional.of(new Missing.NoWindow());
        }
        Duration left = open.remaining(now);
        Duration needed = procedure.window().passInMargin();
        return left.compareTo(needed) < 0 ? Optional.of(new Missing.TooLittleWindow(left, needed)) : Optional.empty();
    }

    private static Optional<Missing> bin(Traveller traveller) {
        Optional<Placement> placement = traveller.placement();
        if (placement.filter(where -> where.binClass().isClean()).isEmpty()) {
            return Optional.of(new Missing.NotInCleanBin(
                    Arrays.stream(BinClass.values()).filter(BinClass::isClean).toList()));
        }
        return placement.filter(where -> !where.closed()).map(where -> new Missing.BinOpen(where.bin()));
    }
}
