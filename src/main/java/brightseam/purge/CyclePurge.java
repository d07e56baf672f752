package brightseam.purge;

/**
 * Whether cycles of pressure or vacuum bring a vessel to a limit, and what that takes.
 *
 * <p>Each cycle thins what was inside by the ratio of the two absolute pressures: (y_n - y_in) = (P_L / P_H)^n (y_0 -
 * y_in), and takes n (P_H - P_L) V / (R T) moles of gas; Crowl and Louvar, chapter 7 (from memory). A vessel is drawn
 * down and filled (vacuum), or filled and let off (pressure): the formula is the same, only where it ends differs.
 */
public sealed interface CyclePurge {

    /** The gas constant in L bar / (mol K); CODATA 2018, exact. */
    double GAS_CONSTANT = 0.0831446261815324;

    /** Zero degrees Celsius in kelvin. */
    double KELVIN = 273.15;

    /**
     * It does.
     *
     * @param cycles whole cycles
     * @param exactCycles before rounding up
     * @param ppmAfter reached after the whole cycles
     * @param moles of gas for all of them
     * @param atmosphericVolumes how many times the vessel's volume that is, at one atmosphere
     */
    record Needed(int cycles, double exactCycles, double ppmAfter, double moles, double atmosphericVolumes)
            implements CyclePurge {

        /** The gas in standard litres of argon. */
        public double argonStandardLitres() {
            return StandardLitres.ofMoles(moles);
        }
    }

    /** It never does, because the gas itself has {@code supplyPpm}, at or above {@code limitPpm}. */
    record Impossible(double limitPpm, double supplyPpm) implements CyclePurge {}

    /**
     * A vessel between two pressures.
     *
     * @param volumeLitres of gas in it
     * @param lowBarAbsolute where a cycle draws down to, or lets off to
     * @param highBarAbsolute where a cycle fills to
     * @param temperatureCelsius of the gas
     */
    record Vessel(double volumeLitres, double lowBarAbsolute, double highBarAbsolute, double temperatureCelsius) {
        /** Refuses no volume, pressures outside 0 to 20 bar or not one above the other, and -50 to 100 degC. */
        public Vessel {
            Quantity.positive("volume in L", volumeLitres, 1e6);
            Quantity.positive("lower pressure in bar absolute", lowBarAbsolute, 20);
            Quantity.positive("upper pressure in bar absolute", highBarAbsolute, 20);
            Quantity.between("temperature in degC", temperatureCelsius, -50, 100);
            if (highBarAbsolute <= lowBarAbsolute) {
                throw new IllegalArgumentException("an upper pressure above the lower, not " + highBarAbsolute
                        + " and " + lowBarAbsolute + " bar");
            }
        }

        /** What one cycle leaves of what was inside. */
        public double keptShare() {
            return lowBarAbsolute / highBarAbsolute;
        }

        /** The gas of one cycle, in moles. */
        public double molesEachCycle() {
            return (highBarAbsolute - lowBarAbsolute) * volumeLitres
                    / (GAS_CONSTANT * (temperatureCelsius + KELVIN));
        }

        /** The ppm after {@code cycles} with a supply of {@code supplyPpm}. */
        public double ppmAfter(int cycles, double startPpm, double supplyPpm) {
            Quantity.between("start in ppm", startPpm, 0, 1e6);
            Quantity.between("supply in ppm", supplyPpm, 0, 1e6);
            Quantity.notNegative("cycles", cycles, 1e9);
            return supplyPpm + Math.pow(keptShare(), cycles) * (startPpm - supplyPpm);
        }
    }

    /** The cycles of {@code vessel} from {@code startPpm} to {@code limitPpm}, with a supply of {@code supplyPpm}. */
    static CyclePurge to(Vessel vessel, double startPpm, double limitPpm, double supplyPpm) {
        Quantity.between("start in ppm", startPpm, 0, 1e6);
        Quantity.between("limit in ppm", limitPpm, 0, 1e6);
        Quantity.between("supply in ppm", supplyPpm, 0, 1e6);
        if (startPpm <= limitPpm) {
            return new Needed(0, 0, startPpm, 0, 0);
        }
        if (limitPpm <= supplyPpm) {
            return new Impossible(limitPpm, supplyPpm);
        }
        double exact = Math.log((limitPpm - supplyPpm) / (startPpm - supplyPpm)) / Math.log(vessel.keptShare());
        int cycles = (int) Math.ceil(exact - 1e-9);
        double pressures = (vessel.highBarAbsolute() - vessel.lowBarAbsolute()) / RoomAir.ATMOSPHERE_BAR;
        return new Needed(cycles, exact, vessel.ppmAfter(cycles, startPpm, supplyPpm),
                cycles * vessel.molesEachCycle(), cycles * pressures);
    }
}
