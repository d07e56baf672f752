package brightseam.demo.physics;

import java.time.Duration;

/**
 * Where a gauge draws its gas, and how slowly it follows.
 *
 * @param gas what it measures
 * @param space where
 * @param lag after a step it has come all but 1/e of the way in this time; zero follows at once
 */
public record Tap(Gas gas, Space space, Duration lag) {

    /** Refuses a negative lag. */
    public Tap {
        if (lag.isNegative()) {
            throw new IllegalArgumentException("a gauge does not run ahead");
        }
    }
}
