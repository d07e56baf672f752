package brightseam.device;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What is remembered of a meter to judge its next reading.
 *
 * @param last its latest reading by time; empty at first
 * @param sameSinceMillis since when it has given that very value
 * @param sameCount in how many readings
 */
public record MeterHealth(Optional<Reading> last, long sameSinceMillis, int sameCount) {

    /** Fewer equal readings than this are chance on a slow meter, however long they took. Common practice. */
    public static final int FROZEN_READINGS_MIN = 10;

    /** A meter that was never heard. */
    public static MeterHealth unheard() {
        return new MeterHealth(Optional.empty(), 0, 0);
    }

    /** This after {@code reading}; one that is older than the latest changes nothing. */
    public MeterHealth after(Reading reading) {
        if (last.filter(known -> known.elapsedMillis() > reading.elapsedMillis()).isPresent()) {
            return this;
        }
        boolean same = last.filter(known -> known.value() == reading.value()).isPresent();
        return same ? new MeterHealth(Optional.of(reading), sameSinceMillis, sameCount + 1)
                : new MeterHealth(Optional.of(reading), reading.elapsedMillis(), 1);
    }

    /**
     * {@code reading} with everything that is to be said of it beside what its feed said. Call on the health before it.
     *
     * @param calibrated whether the meter's calibration holds today
     * @param settled whether its stretch has been settled already
     * @param receivedMillis when it came in; lateness of a simulated feed is not judged, for nothing carries it
     */
    public Reading judged(Meter meter, Reading reading, boolean calibrated, boolean settled, long receivedMillis) {
        Set<Quality> flags = EnumSet.noneOf(Quality.class);
        if (meter.isOutOfRange(reading.value())) {
            flags.add(Quality.OUT_OF_RANGE);
        }
        if (!calibrated) {
            flags.add(Quality.UNCALIBRATED);
        }
        if (after(reading).isFrozen(meter)) {
            flags.add(Quality.FROZEN);
        }
        long delay = receivedMillis - reading.elapsedMillis();
        if (!meter.isSimulated() && (settled || delay > meter.health().lateAfter().toMillis())) {
            flags.add(Quality.LATE);
        }
        switch (meter.feed()) {
            case Feed.Typed typed -> flags.add(Quality.TYPED);
            case Feed.Simulated simulated -> flags.add(Quality.SIMULATED);
            case Feed.Http http -> { }
            case Feed.Modbus modbus -> { }
        }
        return flags.isEmpty() ? reading : reading.with(flags);
    }

    /** What is wrong with {@code meter} at {@code nowMillis}. */
    public Set<Trouble> troubles(Meter meter, boolean calibrated, long nowMillis) {
        Set<Trouble> troubles = EnumSet.noneOf(Trouble.class);
        if (!calibrated) {
            troubles.add(Trouble.UNCALIBRATED);
        }
        if (last.isEmpty()) {
            troubles.add(Trouble.NEVER_HEARD);
            return troubles;
        }
        Reading reading = last.get();
        if (nowMillis - reading.elapsedMillis() > meter.silentAfterMillis()) {
            troubles.add(meter.feed() instanceof Feed.Typed ? Trouble.OVERDUE : Trouble.SILENT);
        }
        if (reading.quality().contains(Quality.LATE)) {
            troubles.add(Trouble.LATE);
        }
        if (reading.quality().contains(Quality.CLOCK_OFF)) {
            troubles.add(Trouble.CLOCK_OFF);
        }
        if (meter.isOutOfRange(reading.value())) {
            troubles.add(Trouble.OUT_OF_RANGE);
        }
        if (isFrozen(meter)) {
            troubles.add(Trouble.FROZEN);
        }
        return troubles;
    }

    private boolean isFrozen(Meter meter) {
        long after = meter.health().frozenAfter().toMillis();
        return after > 0 && !(meter.feed() instanceof Feed.Typed) && sameCount >= FROZEN_READINGS_MIN
                && last.map(reading -> reading.elapsedMillis() - sameSinceMillis > after).orElse(false);
    }
}
