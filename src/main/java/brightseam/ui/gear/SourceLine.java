package brightseam.ui.gear;

import brightseam.chamber.ArgonLeft;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.Manifold;
import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * One source of argon on the page of a chamber.
 *
 * @param supply its label
 * @param title what people call it
 * @param place whether it feeds the chamber
 * @param share what can be drawn of what a full one gives, 0 to 1; empty where that is not known
 * @param amount how much can be drawn, in words
 * @param reading what was read last, in words
 * @param detail certificate and form
 * @param against what stands against connecting it, in sentences; nothing for one that feeds the chamber
 */
record SourceLine(SupplyId supply, String title, Place place, Optional<Double> share, String amount, String reading,
        String detail, List<String> against) {

    /** Where a source stands. */
    enum Place {
        /** It is on the manifold of this chamber. */
        FEEDS,
        /** It may be connected. */
        STANDS_BY,
        /** It may not. */
        STAYS_OFF
    }

    /**
     * The line of {@code source}, read as it is now.
     *
     * @param connected whether it feeds the chamber
     * @param against what stands against connecting it, in sentences
     */
    static SourceLine of(ArgonSource source, String title, boolean connected, List<String> against, Manifold manifold,
            Moment now, ZoneId zone) {
        Optional<ArgonLeft> left = ArgonLeft.of(source, manifold, connected, now);
        Place place = connected ? Place.FEEDS : against.isEmpty() ? Place.STANDS_BY : Place.STAYS_OFF;
        Optional<Double> share = left.flatMap(known -> known.share(source.vessel(), manifold));
        return new SourceLine(source.id(), title, place, share,
                left.map(known -> amount(known, share)).orElse("not known how much"),
                source.last().map(reading -> GasWords.reading(reading, now.wall(), zone)).orElse("never read"),
                GasWords.form(source.vessel().form()) + ", at most "
                        + GasWords.plain(source.purity().oxygenPpm(), "ppm oxygen") + " and "
                        + GasWords.plain(source.purity().moisturePpm(), "ppm moisture") + " by certificate "
                        + source.purity().certificate(),
                connected ? List.of() : against);
    }

    /** What the place is called. */
    String placeWord() {
        return switch (place) {
            case FEEDS -> "Connected";
            case STANDS_BY -> "Stands by";
            case STAYS_OFF -> "Stays off";
        };
    }

    private static String amount(ArgonLeft left, Optional<Double> share) {
        return GasWords.cubicMetres(left.usableStandardLitres()) + " to draw"
                + share.map(part -> ", " + GasWords.percent(part) + " of a full one").orElse("");
    }
}
