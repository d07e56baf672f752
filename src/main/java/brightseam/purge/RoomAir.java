package brightseam.purge;

/**
 * The air of the room, as a leak or an open door lets it in.
 *
 * @param temperatureCelsius of the room
 * @param relativeHumidityPercent over water
 * @param pressureBarAbsolute of the room
 */
public record RoomAir(double temperatureCelsius, double relativeHumidityPercent, double pressureBarAbsolute) {

    /** Oxygen of dry air, 20.946 % by volume (handbook value, from memory; US Standard Atmosphere 1976: 20.9476). */
    public static final double OXYGEN_PPM = 209_460;

    /** One standard atmosphere in bar; exact by definition. */
    public static final double ATMOSPHERE_BAR = 1.01325;

    /** A workshop at 20 degC, 50 % and one atmosphere, for where nobody has measured (common practice). */
    public static final RoomAir WORKSHOP = new RoomAir(20, 50, ATMOSPHERE_BAR);

    /** Refuses rooms below -20 or above 60 degC, humidity outside 0 to 100 %, and pressures outside 0.5 to 1.2 bar. */
    public RoomAir {
        Quantity.between("room temperature in degC", temperatureCelsius, -20, 60);
        Quantity.between("relative humidity in %", relativeHumidityPercent, 0, 100);
        Quantity.between("room pressure in bar absolute", pressureBarAbsolute, 0.5, 1.2);
    }

    /** Water in it, in parts per million of all molecules: humidity times the pressure of saturated vapour. */
    public double moisturePpm() {
        double saturatedPpm = new DewPoint(temperatureCelsius, DewPoint.Phase.WATER).ppm(pressureBarAbsolute);
        return relativeHumidityPercent / 100 * saturatedPpm;
    }

    /** Oxygen in it, in ppm of all molecules: that of dry air, less what water takes the place of. */
    public double oxygenPpm() {
        return OXYGEN_PPM * (1 - moisturePpm() / 1e6);
    }
}
