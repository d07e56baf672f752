package brightseam.ui.baths;

import brightseam.kernel.Limits;
import brightseam.line.BathDeed;
import brightseam.line.BathQuantity;
import brightseam.line.BathTerms;
import brightseam.line.SampleLine;
import brightseam.ui.parts.Trend;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Analyses of a bath as one drawing for each quantity. */
final class Trends {

    private Trends() {}

    /** A trend of every quantity that was ever measured in {@code samples}, which come latest first. */
    static List<Trend> of(List<SampleLine> samples, List<BathDeed> deeds, BathTerms terms, ZoneId zone) {
        List<Trend.Mark> marks = deeds.stream().flatMap(deed -> mark(deed).stream()).toList();
        return List.of(BathQuantity.values()).stream()
                .filter(quantity -> samples.stream().anyMatch(line -> line.values().containsKey(quantity)))
                .map(quantity -> trend(quantity, samples, marks, terms, zone)).toList();
    }

    private static Trend trend(BathQuantity quantity, List<SampleLine> samples, List<Trend.Mark> marks,
            BathTerms terms, ZoneId zone) {
        Limits limits = Optional.ofNullable(terms.limits().get(quantity)).orElse(Limits.none());
        List<Trend.Point> points = samples.reversed().stream().filter(line -> line.values().containsKey(quantity))
                .map(line -> new Trend.Point(line.takenAt(), line.values().get(quantity),
                        !line.outOfLimits().contains(quantity))).toList();
        return new Trend(BathWords.quantity(quantity), quantity.unit(), limits, points, marks, zone);
    }

    private static Optional<Trend.Mark> mark(BathDeed deed) {
        return switch (deed.what()) {
            case MADE_UP -> Optional.of(new Trend.Mark(deed.at(), "fill " + deed.fill()));
            case ADDED -> Optional.of(new Trend.Mark(deed.at(), switch (deed.addend().orElseThrow()) {
                case NITRIC_ACID -> "+ HNO₃";
                case HYDROFLUORIC_ACID -> "+ HF";
                case CLEANER_CONCENTRATE -> "+ cleaner";
                case WATER, DEIONISED_WATER -> "+ water";
            }));
            case REGISTERED, TERMS_CHANGED, LOCKED, UNLOCKED -> Optional.empty();
        };
    }
}
