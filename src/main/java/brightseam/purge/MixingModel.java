package brightseam.purge;

/**
 * One vessel that argon flows through, with a leak: how its ppm of oxygen, or of water, go with time.
 *
 * <p>The part {@code mixingEfficiency} of the supply mixes with all that is inside, the rest runs to the vent without
 * meeting it; air leaks in and mixes; what is too much leaves through the vent:
 *
 * <pre>V dC/dt = e Q (Cin - C) + L (Cair - C)</pre>
 *
 * so that C goes exponentially, with rate k = (e Q + L) / V, to the level (e Q Cin + L Cair) / (e Q + L). With e = 1
 * and L = 0 this is the sweep-through formula Q t = V ln[(C0 - Cin) / (Cf - Cin)] of Crowl and Louvar, chapter 7 (from
 * memory). Argon that enters low and slowly pushes the air out ahead of it, which beats full mixing; then e is above 1.
 *
 * @param volumeLitres of gas in the vessel
 * @param flowLitresPerMinute of supply gas, at the vessel's pressure and temperature; zero for a rise test
 * @param supplyPpm of the same substance in the supply gas
 * @param mixingEfficiency the share of the supply that counts
 * @param leakAirLitresPerMinute of room air
 * @param airPpm of the same substance in that air
 */
public record MixingModel(
        double volumeLitres,
        double flowLitresPerMinute,
        double supplyPpm,
        double mixingEfficiency,
        double leakAirLitresPerMinute,
        double airPpm) {

    /** The largest efficiency that is taken for one: a plug of argon that pushes air would be infinitely good. */
    public static final double EFFICIENCY_MAX = 5;

    /** Refuses no volume, flows below zero, an efficiency outside 0 to 5, and ppm outside 0 to a million. */
    public MixingModel {
        Quantity.positive("volume in L", volumeLitres, 1e6);
        Quantity.notNegative("flow in L/min", flowLitresPerMinute, 1e6);
        Quantity.between("supply in ppm", supplyPpm, 0, 1e6);
        Quantity.between("mixing efficiency", mixingEfficiency, 0, EFFICIENCY_MAX);
        Quantity.notNegative("leak in L/min of air", leakAirLitresPerMinute, 1e6);
        Quantity.between("air in ppm", airPpm, 0, 1e6);
    }

    /** Oxygen, with air of {@link RoomAir#OXYGEN_PPM}. */
    public MixingModel(
            double volumeLitres,
            double flowLitresPerMinute,
            double supplyPpm,
            double mixingEfficiency,
            double leakAirLitresPerMinute) {
        this(volumeLitres, flowLitresPerMinute, supplyPpm, mixingEfficiency, leakAirLitresPerMinute,
                RoomAir.OXYGEN_PPM);
    }

    /** Moisture in the same vessel: the supply's water and that of the air which leaks in; walls give off none here. */
    public MixingModel forMoisture(double supplyMoisturePpm, RoomAir air) {
        return new MixingModel(volumeLitres, flowLitresPerMinute, supplyMoisturePpm, mixingEfficiency,
                leakAirLitresPerMinute, air.moisturePpm());
    }

    /** The same vessel at another flow. */
    public MixingModel withFlow(double litresPerMinute) {
        return new MixingModel(volumeLitres, litresPerMinute, supplyPpm, mixingEfficiency, leakAirLitresPerMinute,
                airPpm);
    }

    /** How fast it goes to its level, per minute; zero where nothing flows and nothing leaks. */
    public double ratePerMinute() {
        return (effectiveFlow() + leakAirLitresPerMinute) / volumeLitres;
    }

    /**
     * The ppm that it goes to and never passes: the supply's, raised by the leak.
     *
     * @return NaN where nothing flows and nothing leaks, because then it stays where it is
     */
    public double levelPpm() {
        return (effectiveFlow() * supplyPpm + leakAirLitresPerMinute * airPpm)
                / (effectiveFlow() + leakAirLitresPerMinute);
    }

    /** The ppm after {@code minutes}, from {@code startPpm} on. */
    public double ppmAfter(double minutes, double startPpm) {
        Quantity.notNegative("time in min", minutes, Double.MAX_VALUE);
        Quantity.between("start in ppm", startPpm, 0, 1e6);
        double rate = ratePerMinute();
        if (rate == 0) {
            return startPpm;
        }
        return levelPpm() + (startPpm - levelPpm()) * Math.exp(-rate * minutes);
    }

    /** How fast the ppm change at {@code ppm}, per minute; below zero while they fall. */
    public double ppmPerMinute(double ppm) {
        return ratePerMinute() == 0 ? 0 : ratePerMinute() * (levelPpm() - ppm);
    }

    /** Time and gas from {@code startPpm} to {@code limitPpm}, or why there is no such time. */
    public SweepPurge sweep(double startPpm, double limitPpm) {
        return SweepPurge.to(this, startPpm, limitPpm);
    }

    double effectiveFlow() {
        return mixingEfficiency * flowLitresPerMinute;
    }
}
