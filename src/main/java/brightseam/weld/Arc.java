package brightseam.weld;

import brightseam.kernel.Moment;
import java.util.Optional;

/**
 * One arc on a joint.
 *
 * @param run its number on the joint, from 1
 * @param purpose what it is for
 * @param setting under what it was begun
 * @param startedAt when it was begun
 * @param hotFrom from when the oxygen over it has to be proven: its beginning, or the end of the arc before where the
 *     joint had not cooled since
 * @param stoppedAt when it ended; empty while it runs
 * @param evidence of the arc; empty until the readings are in
 * @param cooling of the time until it was cool; empty until then, and for ever where another arc came first
 */
public record Arc(
        int run,
        ArcPurpose purpose,
        ArcSetting setting,
        Moment startedAt,
        Moment hotFrom,
        Optional<Moment> stoppedAt,
        Optional<GasEvidence> evidence,
        Optional<GasEvidence> cooling) {

    /** Whether it has not ended. */
    public boolean isRunning() {
        return stoppedAt.isEmpty();
    }

    /** Whether what is known of its oxygen so far leaves a doubt. */
    public boolean isDoubtful() {
        return evidence.filter(known -> !known.clean()).isPresent()
                || cooling.filter(known -> !known.clean()).isPresent();
    }

    Arc stopped(Moment at) {
        return new Arc(run, purpose, setting, startedAt, hotFrom, Optional.of(at), evidence, cooling);
    }

    Arc with(HotStretch stretch, GasEvidence taken) {
        return switch (stretch) {
            case ARC -> new Arc(run, purpose, setting, startedAt, hotFrom, stoppedAt, Optional.of(taken), cooling);
            case COOLING -> new Arc(run, purpose, setting, startedAt, hotFrom, stoppedAt, evidence,
                    Optional.of(taken));
        };
    }
}
