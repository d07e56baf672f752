package brightseam.purge;

/**
 * What happens in a chamber when the inner door of its lock is opened.
 *
 * <p>While the door is open, {@code x = f V1 V2 / (V1 + V2)} litres change sides in each direction. With the exchange f
 * = 1 both rooms end at one mixture, (V1 C1 + V2 C2) / (V1 + V2); with 0 the door was not opened. No gas is lost:
 * V1 C1 + V2 C2 stays. How much a door lets through depends on its size, on how long it stays open and on the hands in
 * the gloves, so 1 is the cautious value.
 *
 * @param chamberLitres volume of the chamber
 * @param lockLitres volume of the lock
 * @param doorExchange share of full mixing, 0 to 1
 */
public record LockOpening(double chamberLitres, double lockLitres, double doorExchange) {

    /** Refuses rooms without a volume and an exchange outside 0 to 1. */
    public LockOpening {
        Quantity.positive("chamber in L", chamberLitres, 1e6);
        Quantity.positive("lock in L", lockLitres, 1e6);
        Quantity.between("exchange through the door", doorExchange, 0, 1);
    }

    /** Both rooms after the door was opened, in ppm of oxygen or of water. */
    public record Mixed(double chamberPpm, double lockPpm) {}

    /**
     * What the opening does to a chamber that goes on being purged.
     *
     * @param mixed both rooms just afterwards
     * @param back the way back to the limit; {@code Needed} with zero minutes where the limit was never passed
     */
    public record Effect(Mixed mixed, SweepPurge back) {}

    /** Both rooms after the opening, from {@code chamberPpm} and {@code lockPpm} before. */
    public Mixed after(double chamberPpm, double lockPpm) {
        Quantity.between("chamber in ppm", chamberPpm, 0, 1e6);
        Quantity.between("lock in ppm", lockPpm, 0, 1e6);
        double exchangedLitres = exchangedLitres();
        return new Mixed(
                chamberPpm + exchangedLitres / chamberLitres * (lockPpm - chamberPpm),
                lockPpm + exchangedLitres / lockLitres * (chamberPpm - lockPpm));
    }

    /**
     * The chamber after the opening, and its way back to {@code limitPpm}.
     *
     * @param chamber how the chamber is purged afterwards
     * @throws IllegalArgumentException where {@code chamber} has another volume than this chamber
     */
    public Effect effect(MixingModel chamber, double chamberPpm, double lockPpm, double limitPpm) {
        if (Math.abs(chamber.volumeLitres() - chamberLitres) > 1e-6 * chamberLitres) {
            throw new IllegalArgumentException("two volumes for one chamber: " + chamber.volumeLitres() + " and "
                    + chamberLitres + " L");
        }
        Mixed mixed = after(chamberPpm, lockPpm);
        return new Effect(mixed, chamber.sweep(mixed.chamberPpm(), limitPpm));
    }

    /**
     * The most that the lock may have for the chamber to stay at or below {@code limitPpm}.
     *
     * @return below zero where the chamber is too far above the limit for any lock to help; never above a million
     */
    public double lockPpmMax(double chamberPpm, double limitPpm) {
        double share = exchangedLitres() / chamberLitres;
        if (share == 0) {
            return chamberPpm <= limitPpm ? 1e6 : -1;
        }
        return Math.min(1e6, chamberPpm + (limitPpm - chamberPpm) / share);
    }

    private double exchangedLitres() {
        return doorExchange * chamberLitres * lockLitres / (chamberLitres + lockLitres);
    }
}
