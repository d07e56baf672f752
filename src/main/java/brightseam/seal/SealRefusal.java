package brightseam.seal;

import brightseam.kernel.Refusal;
import java.time.Instant;

/** Why something is not done to the log. */
public sealed interface SealRefusal extends Refusal {

    /** Two keys sign already, until {@code until}. */
    record KeyOverlapRuns(Instant until) implements SealRefusal {
        @Override
        public String code() {
            return "log-key-overlap-runs";
        }
    }
}
