package brightseam.purge;

/**
 * What raises a chamber's level, told from oxygen and moisture together.
 *
 * <p>Air that leaks in brings both in the ratio of the room's own air: for 209 460 ppm of oxygen the water that this
 * room has. Other ratios have other causes. Gloves and walls give off water and no oxygen (common practice), so much
 * water proves no wet supply; a dew point measured at the supply does.
 */
public enum LevelCause {
    /** Both in the ratio of room air, within a factor of two: a leak is what fits. */
    AIR_LEAK,
    /** Oxygen without the water that air would bring: the supply's own oxygen, or a leak of dry gas. */
    OXYGEN_IN_SUPPLY,
    /** More water than air would bring: wet supply, or gloves and walls that give it off. */
    WET_GAS_OR_SURFACES,
    /** The doubt of the moisture is too large to say. */
    CANNOT_TELL;

    private static final double FACTOR = 2;

    /**
     * The cause of levels above what the supply's certificate has.
     *
     * @param oxygenAbovePpm oxygen level less the supply's
     * @param moistureAbovePpm moisture level less the supply's, with its doubt
     * @param air of the room
     */
    public static LevelCause of(double oxygenAbovePpm, Estimate moistureAbovePpm, RoomAir air) {
        double withAir = Math.max(0, oxygenAbovePpm) * air.moisturePpm() / air.oxygenPpm();
        if (moistureAbovePpm.low() > FACTOR * withAir) {
            return WET_GAS_OR_SURFACES;
        }
        if (moistureAbovePpm.high() < withAir / FACTOR) {
            return OXYGEN_IN_SUPPLY;
        }
        boolean close = moistureAbovePpm.low() >= withAir / FACTOR && moistureAbovePpm.high() <= FACTOR * withAir;
        return close && withAir > 0 ? AIR_LEAK : CANNOT_TELL;
    }
}
