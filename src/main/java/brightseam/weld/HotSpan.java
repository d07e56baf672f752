package brightseam.weld;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;

/**
 * A part of the time that a joint was hot.
 *
 * @param from wall time of its beginning
 * @param to wall time of its end
 * @param seconds how long it lasted, to a tenth
 * @param oxygenPpmPeak the highest oxygen in it; empty where nothing was read
 */
public record HotSpan(Instant from, Instant to, BigDecimal seconds, Optional<BigDecimal> oxygenPpmPeak) {}
