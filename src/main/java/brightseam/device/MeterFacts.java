package brightseam.device;

/**
 * What other registers say of a meter and of the station in its terms.
 *
 * @param isGauge whether the supply register has a gauge under its label that is still there
 * @param stationKnown whether the station of the command's terms is registered; true where it has none
 */
public record MeterFacts(boolean isGauge, boolean stationKnown) {}
