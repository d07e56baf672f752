package brightseam.people.shell;

import java.time.Instant;

/**
 * Real time for idle tablets and for the pauses after wrong PINs. Not the shop's clock: a demo clock that runs faster
 * must not sign people out faster.
 */
interface RealTime {

    Instant now();

    default long millis() {
        return now().toEpochMilli();
    }
}
