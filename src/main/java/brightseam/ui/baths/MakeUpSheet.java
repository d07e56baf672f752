package brightseam.ui.baths;

import brightseam.bath.MakeUp;
import brightseam.bath.VolumeStrength;
import brightseam.line.Addend;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What has to be added to a bath, with the way to it.
 *
 * @param litres by what is added; empty where it cannot be done
 * @param workings lines for the record
 * @param problem why it cannot be done
 */
record MakeUpSheet(Map<Addend, BigDecimal> litres, List<String> workings, Optional<String> problem) {

    /**
     * Brings acid to {@code target}.
     *
     * @param inTank litres that are in the tank now; zero for a new fill
     * @param now strength by the last analysis, vol % of the concentrates
     * @param level litres afterwards
     */
    static MakeUpSheet acid(BigDecimal inTank, VolumeStrength now, VolumeStrength target, BigDecimal level) {
        String wanted = strength(target) + " at " + level.toPlainString() + " L";
        return switch (MakeUp.plan(new MakeUp.Now(inTank.doubleValue(), now), target, level.doubleValue(), true)) {
            case MakeUp.Additions add -> {
                Map<Addend, BigDecimal> litres = new EnumMap<>(Addend.class);
                litres.put(Addend.NITRIC_ACID, litres(add.nitricLitres()));
                litres.put(Addend.HYDROFLUORIC_ACID, litres(add.hydrofluoricLitres()));
                litres.put(Addend.WATER, litres(add.waterLitres()));
                yield new MakeUpSheet(litres, List.of(
                        "now " + inTank.toPlainString() + " L with " + strength(now) + "; wanted " + wanted,
                        "draw off first: " + litres(add.drawOffLitres()).toPlainString() + " L",
                        "nitric acid = target x level - now x what stays = "
                                + litres.get(Addend.NITRIC_ACID).toPlainString() + " L",
                        "hydrofluoric acid = target x level - now x what stays = "
                                + litres.get(Addend.HYDROFLUORIC_ACID).toPlainString() + " L",
                        "water = the rest = " + litres.get(Addend.WATER).toPlainString() + " L",
                        "of what is dissolved stays " + percent(add.keptShare()) + " % of its concentration"),
                        Optional.empty());
            }
            case MakeUp.TargetAboveStock above -> new MakeUpSheet(Map.of(), List.of(), Optional.of(
                    "No mixture of these concentrates is that strong."));
            case MakeUp.WouldOverflow over -> new MakeUpSheet(Map.of(), List.of(), Optional.of(
                    "It does not fit: the bath would come to " + litres(over.litresNeeded()).toPlainString() + " L."));
        };
    }

    /** Brings a cleaner to {@code target} per cent of its concentrate: c = V x (target - now) / (100 - target). */
    static MakeUpSheet cleaner(BigDecimal volumeLitres, BigDecimal now, BigDecimal target) {
        if (target.compareTo(now) < 0 || target.compareTo(new BigDecimal("90")) > 0) {
            return new MakeUpSheet(Map.of(), List.of(),
                    Optional.of("Concentrate makes it stronger, never weaker, and not above 90 %."));
        }
        BigDecimal litres = volumeLitres.multiply(target.subtract(now))
                .divide(new BigDecimal("100").subtract(target), 1, RoundingMode.HALF_UP);
        return new MakeUpSheet(Map.of(Addend.CLEANER_CONCENTRATE, litres), List.of(
                "concentrate = " + volumeLitres.toPlainString() + " L x (" + target.toPlainString() + " - "
                        + now.toPlainString() + ") / (100 - " + target.toPlainString() + ") = "
                        + litres.toPlainString() + " L"), Optional.empty());
    }

    private static String strength(VolumeStrength strength) {
        return percent(strength.nitricPercent() / 100) + " vol % nitric and "
                + percent(strength.hydrofluoricPercent() / 100) + " vol % hydrofluoric acid";
    }

    private static String percent(double share) {
        return BigDecimal.valueOf(100 * share).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    private static BigDecimal litres(double litres) {
        return BigDecimal.valueOf(litres).setScale(1, RoundingMode.HALF_UP);
    }
}
