package brightseam.session;

import brightseam.kernel.Moment;
import java.time.Duration;
import java.util.Optional;

/**
 * A purge of the chamber.
 *
 * @param startedAt when the argon was turned on
 * @param argon what it began with
 * @param limits what it has to reach
 * @param forecast how long it was expected to take; empty where nobody could say
 * @param stoppedAt when it was stopped; empty while it runs
 */
public record Purge(Moment startedAt, ArgonFact argon, GasLimits limits, Optional<Duration> forecast,
        Optional<Moment> stoppedAt) {

    Purge stopped(Moment at) {
        return new Purge(startedAt, argon, limits, forecast, Optional.of(at));
    }
}
