package brightseam.demo.physics;

import java.time.Duration;

/**
 * What a chamber is made of, as far as its gas is concerned. Flows are litres a minute at the chamber's pressure and
 * temperature, which stay what they are.
 *
 * @param chamberLitres volume of the chamber
 * @param lockLitres volume of the transfer lock
 * @param sleeveLitres volume of all glove sleeves together
 * @param roomLitres volume of the room
 * @param sleeveLitresPerMinute what the sleeves exchange with the chamber
 * @param innerDoorLitresPerMinute what chamber and lock exchange through the open inner door
 * @param outerDoorLitresPerMinute what lock and room exchange through the open outer door
 * @param frontLitresPerMinute what chamber and room exchange while the chamber stands open
 * @param mixing the share of the purge gas that mixes before it leaves, above 0 to 1; the rest goes straight out
 * @param wallPpmLitres water held by damp chamber walls, in ppm times litres of vapour
 * @param lockWallPpmLitres water held by the damp walls of the lock, likewise
 * @param dryingTime after which the walls hold 1/e of it
 * @param wettingTime after which dry walls in room air hold all but 1/e of it
 * @param arcOxygen oxygen that a burning arc drives out, in ppm times litres a minute
 * @param arcMoisture water that a burning arc drives out, likewise
 */
public record ChamberBody(double chamberLitres, double lockLitres, double sleeveLitres, double roomLitres,
        double sleeveLitresPerMinute, double innerDoorLitresPerMinute, double outerDoorLitresPerMinute,
        double frontLitresPerMinute, double mixing, double wallPpmLitres, double lockWallPpmLitres,
        Duration dryingTime, Duration wettingTime, double arcOxygen, double arcMoisture) {

    /** Refuses volumes that are not above zero and a mixing outside 0 to 1. */
    public ChamberBody {
        if (!(chamberLitres > 0 && lockLitres > 0 && sleeveLitres > 0 && roomLitres > 0)) {
            throw new IllegalArgumentException("every volume is above zero");
        }
        if (!(mixing > 0 && mixing <= 1)) {
            throw new IllegalArgumentException("mixing: above 0 to 1");
        }
        if (!dryingTime.isPositive() || !wettingTime.isPositive()) {
            throw new IllegalArgumentException("walls take time to dry and to get wet");
        }
    }

    /** The invented chamber of the demo shop: 1,150 L with three glove ports and a lock of 85 L. */
    public static ChamberBody demo() {
        return new ChamberBody(1_150, 85, 3 * 6, 110_000, 12, 60, 400, 4_000, 0.88, 200_000, 8_000,
                Duration.ofMinutes(40), Duration.ofMinutes(5), 150, 300);
    }

    /** A chamber as in a textbook: mixes wholly, dry walls, arcs that drive nothing out; for checks. */
    public static ChamberBody ideal(double chamberLitres, double lockLitres) {
        return new ChamberBody(chamberLitres, lockLitres, 1, 1e9, 0, 100, 400, 4_000, 1, 0, 0,
                Duration.ofMinutes(20), Duration.ofMinutes(5), 0, 0);
    }

    double litres(Space space) {
        return switch (space) {
            case CHAMBER -> chamberLitres;
            case LOCK -> lockLitres;
            case SLEEVES -> sleeveLitres;
            case ROOM -> roomLitres;
        };
    }
}
