package brightseam.ui.meters;

import brightseam.device.MeterNow;
import brightseam.device.MeterRecord;
import brightseam.kernel.SupplyId;
import java.util.Optional;

/**
 * One meter as a list and its own page tell it.
 *
 * @param id its label
 * @param what what it measures, and where
 * @param value its last reading with unit, or that there is none
 * @param age how old that is; empty where there is none
 * @param state one word or two: in order, or what is wrong
 * @param detail what is wrong and what to do; empty where nothing is
 * @param stops whether nothing may be decided on it now
 * @param simulated whether a program makes its readings up
 */
record MeterLine(SupplyId id, String what, String value, String age, String state, String detail, boolean stops,
        boolean simulated) {

    /** How the meter of {@code record} stands; {@code failure} is why its device is not answered. */
    static MeterLine of(MeterRecord record, MeterNow now, Optional<String> failure) {
        String what = MeterWording.quantity(now.meter().quantity()) + ", "
                + MeterWording.place(now.meter().place()) + " " + now.meter().station();
        String value = now.last().map(last -> MeterWording.value(now.meter(), last.value())).orElse("no reading yet");
        String age = now.last().map(last -> MeterWording.age(now.age())).orElse("");
        if (!record.isInUse()) {
            return new MeterLine(now.meter().id(), what, value, age, "Out of use", record.outOfUse().orElseThrow(),
                    true, now.simulated());
        }
        String detail = MeterWording.troubles(now)
                + failure.map(reason -> " The device answers: " + reason + ".").orElse("");
        return new MeterLine(now.meter().id(), what, value, age, state(now), detail.strip(), !now.isUsable(),
                now.simulated());
    }

    /** The first trouble by name; a meter with several is told with all of them in the detail. */
    private static String state(MeterNow now) {
        return now.troubles().stream().findFirst().map(trouble -> switch (trouble) {
            case NEVER_HEARD -> "Never heard";
            case SILENT -> "Silent";
            case OVERDUE -> "Reading overdue";
            case FROZEN -> "Frozen";
            case OUT_OF_RANGE -> "Out of range";
            case UNCALIBRATED -> "Not calibrated";
            case LATE -> "Late";
            case CLOCK_OFF -> "Clock off";
        }).orElse("In order");
    }
}
