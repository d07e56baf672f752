package brightseam.bath;

import java.time.Duration;

/**
 * How fast a bath takes metal off one surface.
 *
 * @param micrometresPerMinute per surface; zero for a bath that takes nothing
 */
public record EtchRate(double micrometresPerMinute) {

    private static final double MINUTES_PER_HOUR = 60;
    /** A year of 8760 hours, as the constants of ASTM G1 and G31 have it. */
    private static final double HOURS_PER_YEAR = 8760;
    private static final double NANOS_PER_MINUTE = 60e9;

    /** Refuses what is below zero or above 10 mm a minute. */
    public EtchRate {
        Quantity.notNegative("etch rate in um/min", micrometresPerMinute, 1e4);
    }

    /**
     * The mean rate of {@code removal} in {@code soak}.
     *
     * @throws IllegalArgumentException where {@code soak} is not above zero
     */
    public static EtchRate of(Removal removal, Duration soak) {
        if (soak.isNegative() || soak.isZero()) {
            throw new IllegalArgumentException("a soak above zero, not " + soak);
        }
        return new EtchRate(removal.micrometres() / minutes(soak));
    }

    /** {@code milPerMinute} thousandths of an inch a minute. */
    public static EtchRate ofMilPerMinute(double milPerMinute) {
        return new EtchRate(milPerMinute * Removal.MICROMETRES_PER_MIL);
    }

    /** {@code inchesPerHour}, as many shops write it. */
    public static EtchRate ofInchesPerHour(double inchesPerHour) {
        return ofMilPerMinute(1000 * inchesPerHour / MINUTES_PER_HOUR);
    }

    /** In thousandths of an inch a minute. */
    public double milPerMinute() {
        return micrometresPerMinute / Removal.MICROMETRES_PER_MIL;
    }

    /** In inches an hour. */
    public double inchesPerHour() {
        return milPerMinute() * MINUTES_PER_HOUR / 1000;
    }

    /** In millimetres a year of 8760 hours, as corrosion rates are given. */
    public double millimetresPerYear() {
        return micrometresPerMinute * MINUTES_PER_HOUR * HOURS_PER_YEAR / 1000;
    }

    /** In thousandths of an inch a year of 8760 hours (mpy). */
    public double milPerYear() {
        return 1000 * millimetresPerYear() / Removal.MICROMETRES_PER_MIL;
    }

    /** What it takes off in {@code soak}. */
    public Removal in(Duration soak) {
        return new Removal(micrometresPerMinute * minutes(soak));
    }

    /** How long it needs for {@code removal}, in minutes; infinite at a rate of zero, and zero for no removal. */
    public double minutesFor(Removal removal) {
        return removal.micrometres() == 0 ? 0 : removal.micrometres() / micrometresPerMinute;
    }

    private static double minutes(Duration soak) {
        return (soak.getSeconds() * 1e9 + soak.getNano()) / NANOS_PER_MINUTE;
    }
}
