package brightseam.ui.admin;

import brightseam.supply.Supply;
import brightseam.words.Words;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;

/** How a supply stands on a day, in words, and which ones are looked at first. */
final class SupplyState {

    /** How long before its last day a supply is worth a look; our own choice. */
    private static final int SOON_DAYS = 30;

    private SupplyState() {}

    /** What stands against {@code supply} on {@code today}, in capitals, or how it is. */
    static String words(Supply supply, LocalDate today) {
        return switch (supply.standing()) {
            case USED_UP -> "used up";
            case RETIRED -> "retired";
            case UNOPENED, OPENED -> supply.contamination().map(what -> "CONTAMINATED: " + what)
                    .orElseGet(() -> supply.lastDay().map(last -> dated(supply, last, today))
                            .orElse("fit for use"));
        };
    }

    /** What can still be used before what is gone; of that, what is or goes out of date first. */
    static List<Supply> sorted(List<Supply> all) {
        return all.stream().sorted(Comparator
                .comparing((Supply supply) -> !supply.standing().isUsable())
                .thenComparing(supply -> supply.contamination().isEmpty())
                .thenComparing(supply -> supply.lastDay().orElse(LocalDate.MAX))
                .thenComparing(Supply::id)).toList();
    }

    private static String dated(Supply supply, LocalDate last, LocalDate today) {
        long days = ChronoUnit.DAYS.between(today, last);
        if (days < 0) {
            return (supply.isGauge() ? "NOT CALIBRATED since " : "EXPIRED since ") + last;
        }
        String until = supply.isGauge() ? "calibrated until " : "fit until ";
        return until + last + (days > SOON_DAYS ? ""
                : days == 0 ? ", ENDS TODAY" : ", ends in " + Words.count(days, "day", "days"));
    }
}
