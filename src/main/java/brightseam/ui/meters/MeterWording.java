package brightseam.ui.meters;

import brightseam.device.Feed;
import brightseam.device.Meter;
import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.MeterQuantity;
import brightseam.device.ModbusPoint;
import brightseam.device.RegisterKind;
import brightseam.device.SeriesText;
import brightseam.device.Trouble;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.stream.Collectors;

/** Meters in words. */
final class MeterWording {

    private static final double MILLIS = 1000;

    private MeterWording() {}

    static String quantity(MeterQuantity quantity) {
        return switch (quantity) {
            case OXYGEN_PPM -> "Oxygen, ppm";
            case MOISTURE_PPM -> "Moisture, ppm";
            case DEW_POINT_CELSIUS -> "Dew point, °C";
            case PRESSURE_BAR -> "Pressure, bar";
            case FLOW_LITRES_PER_MINUTE -> "Flow, L/min";
            case TEMPERATURE_CELSIUS -> "Temperature, °C";
            case LEVEL_PERCENT -> "Level, %";
            case OXYGEN_PERCENT -> "Oxygen in the air, %";
        };
    }

    static String place(MeterPlace place) {
        return switch (place) {
            case CHAMBER -> "in the chamber";
            case LOCK -> "in the lock";
            case BACK_SIDE -> "on the back side";
            case SUPPLY -> "at the argon";
            case ROOM -> "in the room";
        };
    }

    static String register(RegisterKind kind) {
        return switch (kind) {
            case INT16 -> "whole number, 16 bits";
            case UINT16 -> "whole number without sign, 16 bits";
            case INT32 -> "whole number, 32 bits, high word first";
            case INT32_LOW_WORD_FIRST -> "whole number, 32 bits, low word first";
            case FLOAT32 -> "float, 32 bits, high word first";
            case FLOAT32_LOW_WORD_FIRST -> "float, 32 bits, low word first";
        };
    }

    static String feed(Feed feed) {
        return switch (feed) {
            case Feed.Http http -> "sent by its device over HTTP";
            case Feed.Modbus(ModbusPoint point) -> "asked over Modbus TCP: " + point.host() + ":" + point.port()
                    + ", unit " + point.unit() + ", " + (point.input() ? "input" : "holding") + " register "
                    + point.register() + ", " + register(point.kind()) + ", × " + point.scale().toPlainString()
                    + (point.offset().signum() == 0 ? "" : " + " + point.offset().toPlainString());
            case Feed.Typed(Duration interval) -> "typed, every " + Words.duration(interval);
            case Feed.Simulated made -> "simulated";
        };
    }

    /** Such as {@code 12.3 ppm O2}, with no more places than the meter shows. */
    static String value(Meter meter, double value) {
        int places = Math.max(0, new BigDecimal(SeriesText.plain(meter.resolution())).scale());
        BigDecimal shown = new BigDecimal(SeriesText.plain(value));
        return (shown.scale() > places ? shown.setScale(places, RoundingMode.HALF_EVEN) : shown).toPlainString()
                .replace('-', '−') + "\u00a0" + meter.quantity().unit();
    }

    /** How old the last reading is: tenths of a second while it is fresh. */
    static String age(Duration age) {
        return age.toMillis() < MILLIS * 10 ? "%.1f s old".formatted(Math.max(0, age.toMillis() / MILLIS))
                : Words.duration(age) + " old";
    }

    /** Every trouble in a sentence; empty where there is none. */
    static String troubles(MeterNow now) {
        return now.troubles().stream().map(trouble -> trouble(now, trouble)).collect(Collectors.joining(" "));
    }

    private static String trouble(MeterNow now, Trouble trouble) {
        return switch (trouble) {
            case NEVER_HEARD -> "It was never heard. Look at the device, its cable and its settings.";
            case SILENT -> "No reading for " + Words.duration(now.age()) + ". Look at the device and its cable.";
            case OVERDUE -> "A reading is overdue. Read the meter and type what it shows.";
            case FROZEN -> "The very same value for too long: the meter may have stopped. Let it see other gas.";
            case OUT_OF_RANGE -> "At the end of its range: the true value may lie beyond.";
            case UNCALIBRATED -> "Its calibration is over. Have it calibrated, or use another.";
            case LATE -> "Its last reading came in late.";
            case CLOCK_OFF -> "Its device's clock is wrong. The times are set right; set the clock.";
        };
    }
}
