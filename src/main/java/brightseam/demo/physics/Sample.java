package brightseam.demo.physics;

/**
 * One reading that a simulated gauge gives.
 *
 * @param label the gauge's label
 * @param elapsedMillis when, on the shop's elapsed time line
 * @param value in the unit of its signal
 */
public record Sample(String label, long elapsedMillis, double value) {}
