package brightseam.device;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * A meter at one moment.
 *
 * @param meter which
 * @param last its last reading
 * @param age how old that is; zero where there is none
 * @param troubles what is wrong with it, sorted
 * @param simulated whether a program makes its readings up
 */
public record MeterNow(Meter meter, Optional<Reading> last, Duration age, Set<Trouble> troubles, boolean simulated) {

    /** Copies the set, sorted. */
    public MeterNow {
        Set<Trouble> copy = EnumSet.noneOf(Trouble.class);
        copy.addAll(troubles);
        troubles = Collections.unmodifiableSet(copy);
    }

    /** Whether something may be decided on its last reading. */
    public boolean isUsable() {
        return last.isPresent() && troubles.stream().noneMatch(Trouble::stopsUse);
    }
}
