package brightseam.purge;

/**
 * A leak told from how fast oxygen rises in a closed vessel with no flow.
 *
 * <p>V dC/dt = L (Cair - C), so L = V / t ln[(Cair - C0) / (Cair - C1)], which is V dC/dt / Cair while the ppm are
 * small. The vessel stands at the room's pressure; under purge, with some millibar more inside, the same hole lets less
 * air in.
 *
 * @param volumeLitres of the vessel
 * @param minutes from the first reading to the last
 * @param startPpm oxygen at first
 * @param endPpm oxygen at last
 * @param readingPlusMinusPpm how far either reading may be off
 */
public record RiseTest(
        double volumeLitres, double minutes, double startPpm, double endPpm, double readingPlusMinusPpm) {

    /** Refuses no volume, no time, and ppm at or above those of air. */
    public RiseTest {
        Quantity.positive("volume in L", volumeLitres, 1e6);
        Quantity.positive("time in min", minutes, 1e6);
        Quantity.between("start in ppm", startPpm, 0, Math.nextDown(RoomAir.OXYGEN_PPM));
        Quantity.between("end in ppm", endPpm, 0, Math.nextDown(RoomAir.OXYGEN_PPM));
        Quantity.between("reading plus or minus in ppm", readingPlusMinusPpm, 0, RoomAir.OXYGEN_PPM);
    }

    /** The leak in litres of air a minute; below zero where oxygen fell, which is no leak but a reading that is off. */
    public double leakAirLitresPerMinute() {
        return volumeLitres / minutes
                * Math.log((RoomAir.OXYGEN_PPM - startPpm) / (RoomAir.OXYGEN_PPM - endPpm));
    }

    /** How far the leak may be off, in L/min: both readings off at once, in opposite directions. */
    public double plusMinusLitresPerMinute() {
        return volumeLitres / minutes * readingPlusMinusPpm
                * (1 / (RoomAir.OXYGEN_PPM - startPpm) + 1 / (RoomAir.OXYGEN_PPM - endPpm));
    }

    /** Whether the rise is more than the readings' own doubt. */
    public boolean showsLeak() {
        return leakAirLitresPerMinute() > plusMinusLitresPerMinute();
    }
}
