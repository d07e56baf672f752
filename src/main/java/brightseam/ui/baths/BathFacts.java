package brightseam.ui.baths;

import brightseam.kernel.Moment;
import brightseam.line.Analysis;
import brightseam.line.Bath;
import brightseam.line.BathQuantity;
import brightseam.line.Liquid;
import brightseam.line.LoadTaken;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the page of one bath says about it, as lines of a name and words. */
final class BathFacts {

    /** One line. */
    record Fact(String name, String words) {}

    /** One quantity of the last analysis against its limits. */
    record Measured(BathQuantity quantity, Optional<BigDecimal> value, String limits, String verdict) {}

    private BathFacts() {}

    static List<Fact> of(Bath bath, List<LoadTaken> inside, int suspects, Moment now, ZoneId zone) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Holds", Words.quantity(bath.volumeLitres(), "L") + " "
                + BathWords.liquid(bath.liquid()) + ", fill " + bath.fill().number() + " since "
                + Words.clockTime(bath.fill().at().wall(), now.wall(), zone)));
        facts.add(new Fact("In it now", TankLine.inside(inside, now, zone) + "; room for "
                + Words.count(bath.basketsAtOnce(), "basket", "baskets")));
        if (bath.isAnalysed()) {
            facts.add(new Fact("Next analysis", TankLine.due(bath, now, zone)));
            facts.add(new Fact("Last good sample", bath.lastGood().map(good -> sample(good, now, zone))
                    .orElse("none of this fill")));
            facts.add(new Fact("Since then", since(bath)));
            facts.add(new Fact("Suspect if it proved bad now", suspects == 0 ? "nothing"
                    : Words.count(suspects, "traveller", "travellers")));
        }
        if (bath.liquid() == Liquid.PICKLING_ACID) {
            facts.add(new Fact("Dissolved titanium, estimate", titanium(bath)));
        }
        return facts;
    }

    /** Every quantity with limits, or that was measured, in the order of the quantities. */
    static List<Measured> measured(Bath bath) {
        return List.of(BathQuantity.values()).stream()
                .filter(quantity -> bath.terms().limits().containsKey(quantity)
                        || value(bath, quantity).isPresent())
                .map(quantity -> measured(bath, quantity)).toList();
    }

    private static Measured measured(Bath bath, BathQuantity quantity) {
        Optional<BigDecimal> value = value(bath, quantity);
        var limits = Optional.ofNullable(bath.terms().limits().get(quantity));
        String verdict = value.isEmpty() ? "not measured"
                : limits.isEmpty() ? "no limit" : limits.get().admits(value.get()) ? "in order" : "OUT OF LIMITS";
        return new Measured(quantity, value,
                limits.map(found -> Words.limits(found, quantity.unit())).orElse("no limit"), verdict);
    }

    private static Optional<BigDecimal> value(Bath bath, BathQuantity quantity) {
        return bath.lastAnalysis().map(last -> last.values().get(quantity));
    }

    private static String sample(Analysis good, Moment now, ZoneId zone) {
        return good.sample() + ", taken " + Words.when(good.takenAt().wall(), now.wall(), zone) + ", signed by "
                + good.by();
    }

    private static String since(Bath bath) {
        String loads = Words.count(bath.loadsSinceGood(), "load", "loads");
        String area = bath.areaSinceGoodSquareMetres().signum() == 0 ? ""
                : ", " + Words.quantity(bath.areaSinceGoodSquareMetres(), "m²") + " of known area";
        String unknown = bath.loadsOfUnknownArea() == 0 ? ""
                : ", " + bath.loadsOfUnknownArea() + " of them of unknown area";
        return loads + area + unknown;
    }

    private static String titanium(Bath bath) {
        String value = Words.quantity(bath.titaniumGramPerLitre().setScale(2, RoundingMode.HALF_UP), "g/L");
        return bath.loadsOfUnknownArea() == 0 ? value
                : "at least " + value + ": loads of unknown area are not counted";
    }
}
