package brightseam.purge;

/**
 * A number told from measurements, with its doubt.
 *
 * @param value as likely too low as too high
 * @param low below it with a chance of 5 %
 * @param high above it with a chance of 5 %; infinite where no bound can be told
 */
public record Estimate(double value, double low, double high) {}
