package brightseam.demo.physics;

import java.time.Duration;

/**
 * One gauge of a simulated chamber.
 *
 * @param label its label
 * @param signal what it looks at
 * @param lag how slowly it follows
 * @param every how far its readings are apart, whole seconds
 * @param instrument what it makes of what it has followed to
 */
public record Gauge(String label, Signal signal, Duration lag, Duration every, Instrument instrument) {

    /** Refuses readings closer than a second. */
    public Gauge {
        if (every.toSeconds() < 1 || every.toMillis() % 1_000 != 0) {
            throw new IllegalArgumentException("readings: whole seconds apart");
        }
    }
}
