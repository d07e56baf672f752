package brightseam.line;

import brightseam.kernel.TravellerId;
import java.util.List;
import java.util.Optional;

/**
 * What a command made of a bath.
 *
 * @param bath the bath afterwards
 * @param suspects the travellers that became suspect by it, sorted
 * @param cause by which lock; empty where nothing was found bad
 */
public record BathVerdict(Bath bath, List<TravellerId> suspects, Optional<BathLock.Cause> cause) {

    /** The verdict that {@code events} brought about. */
    public static BathVerdict of(Bath bath, List<BathEvent> events) {
        return events.stream().filter(BathEvent.SuspectsNamed.class::isInstance)
                .map(BathEvent.SuspectsNamed.class::cast).findFirst()
                .map(named -> new BathVerdict(bath, named.travellers(), Optional.of(named.cause())))
                .orElseGet(() -> new BathVerdict(bath, List.of(), Optional.empty()));
    }
}
