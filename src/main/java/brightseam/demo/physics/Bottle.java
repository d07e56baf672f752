package brightseam.demo.physics;

/**
 * Argon of one delivery.
 *
 * @param source how much there is and at what pressure
 * @param oxygenPpm oxygen in it
 * @param moisturePpm water in it
 */
public record Bottle(ArgonSource source, double oxygenPpm, double moisturePpm) {}
