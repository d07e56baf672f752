package brightseam.ui.chamber;

import brightseam.device.Meter;
import brightseam.device.MeterNow;
import brightseam.device.Trouble;
import brightseam.words.Words;

/** Meters and what is wrong with them, in words. */
final class MeterWords {

    private MeterWords() {}

    /** Such as {@code Oxygen meter G-0501 in the chamber}. */
    static String name(Meter meter) {
        String what = switch (meter.quantity()) {
            case OXYGEN_PPM -> "Oxygen meter";
            case OXYGEN_PERCENT -> "Oxygen monitor";
            case MOISTURE_PPM -> "Moisture meter";
            case DEW_POINT_CELSIUS -> "Dew point meter";
            case PRESSURE_BAR -> "Pressure gauge";
            case FLOW_LITRES_PER_MINUTE -> "Flow meter";
            case TEMPERATURE_CELSIUS -> "Thermometer";
            case LEVEL_PERCENT -> "Level gauge";
        };
        return what + " " + meter.id() + switch (meter.place()) {
            case CHAMBER -> " in the chamber";
            case LOCK -> " in the lock";
            case BACK_SIDE -> " on the back side";
            case SUPPLY -> " at the argon";
            case ROOM -> " in the room";
        };
    }

    /** Such as {@code silent for 14 s}. */
    static String trouble(MeterNow meter, Trouble trouble) {
        return switch (trouble) {
            case NEVER_HEARD -> "was never heard";
            case SILENT -> "silent for " + Words.duration(meter.age());
            case OVERDUE -> "waits for a typed reading";
            case FROZEN -> "frozen: the same value for too long";
            case OUT_OF_RANGE -> "at the end of its range";
            case UNCALIBRATED -> "past its calibration";
            case LATE -> "sends late";
            case CLOCK_OFF -> "has a clock that is off; its times are set right";
        };
    }
}
