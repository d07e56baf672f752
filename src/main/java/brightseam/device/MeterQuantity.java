package brightseam.device;

/** What a meter measures, and in which unit. */
public enum MeterQuantity {
    /** Oxygen in argon, parts per million by volume. */
    OXYGEN_PPM("ppm O2"),
    /** Water vapour in argon, parts per million by volume. */
    MOISTURE_PPM("ppm H2O"),
    /** Dew point at the pressure of the cell; below 0 degrees over ice. */
    DEW_POINT_CELSIUS("°C dew point"),
    /** Pressure as the meter shows it; whether gauge or absolute is a matter of the meter's title. */
    PRESSURE_BAR("bar"),
    /** Volume flow as the meter shows it. */
    FLOW_LITRES_PER_MINUTE("L/min"),
    /** Temperature. */
    TEMPERATURE_CELSIUS("°C"),
    /** What is left in a vessel, in percent of its full level. */
    LEVEL_PERCENT("%"),
    /** Oxygen in the air of the room, in percent by volume. */
    OXYGEN_PERCENT("% O2");

    private final String unit;

    MeterQuantity(String unit) {
        this.unit = unit;
    }

    /** The unit as it is printed behind a value. */
    public String unit() {
        return unit;
    }
}
