package brightseam.line;

import brightseam.bath.AcidTitration;
import brightseam.bath.BathAnalysis;
import brightseam.bath.FluorideReading;
import brightseam.bath.StockAcid;
import brightseam.bath.Stocks;
import brightseam.bath.VolumeStrength;
import brightseam.bath.Working;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What burette readings of a pickle's sample say, with the way to it in lines for the record.
 *
 * <p>Volume percent is counted in the concentrates of ASTM B600-91, 4.3.2: 70 % nitric and 60 % hydrofluoric acid. It
 * is kept to 0.01, which is finer than titrations of such baths repeat.
 */
public sealed interface AcidSample {

    /** The concentrates that a pickle's volume percent is counted in. */
    Stocks STOCKS = new Stocks(StockAcid.NITRIC_70, StockAcid.HYDROFLUORIC_60);

    /** How it came about, line by line. */
    List<String> workings();

    /** Both acids and the titanium that was assumed. */
    record Found(SortedMap<BathQuantity, BigDecimal> values, List<String> workings) implements AcidSample {}

    /** The determinations contradict each other; nothing follows from them. */
    record Contradiction(Why why, List<String> workings) implements AcidSample {

        /** Which way they contradict. */
        public enum Why {
            /** Titanium would bind more fluoride than was found. */
            LESS_FLUORIDE_THAN_TITANIUM_BINDS,
            /** Fluoride and titanium take more acid than was titrated. */
            LESS_ACID_THAN_FLUORIDE
        }
    }

    /** Works the readings out. */
    static AcidSample of(AcidTitration acid, FluorideReading fluoride, BathAnalysis.Assumptions assumed) {
        List<String> lines = new ArrayList<>(List.of("titanium in the titration: "
                + assumed.acidity().equivalentsPerTitanium() + " acid equivalents each; fluoride found: "
                + assumed.fluoride().name().toLowerCase(java.util.Locale.ROOT)));
        BathAnalysis analysis = BathAnalysis.of(acid, fluoride, assumed);
        analysis.workings().forEach(working -> lines.add(line(working)));
        return switch (analysis) {
            case BathAnalysis.Found found -> {
                VolumeStrength strength = STOCKS.strength(found.content());
                BigDecimal nitric = percent(strength.nitricPercent());
                BigDecimal hydrofluoric = percent(strength.hydrofluoricPercent());
                lines.add(inVolume("nitric acid", STOCKS.nitric(), nitric));
                lines.add(inVolume("hydrofluoric acid", STOCKS.hydrofluoric(), hydrofluoric));
                SortedMap<BathQuantity, BigDecimal> values = new TreeMap<>();
                values.put(BathQuantity.NITRIC_ACID, nitric);
                values.put(BathQuantity.HYDROFLUORIC_ACID, hydrofluoric);
                values.put(BathQuantity.DISSOLVED_TITANIUM, BigDecimal.valueOf(assumed.titaniumGramsPerLitre()));
                yield new Found(values, lines);
            }
            case BathAnalysis.LessFluorideThanTitaniumBinds less ->
                new Contradiction(Contradiction.Why.LESS_FLUORIDE_THAN_TITANIUM_BINDS, lines);
            case BathAnalysis.LessAcidThanFluoride less ->
                new Contradiction(Contradiction.Why.LESS_ACID_THAN_FLUORIDE, lines);
        };
    }

    private static String line(Working working) {
        return working.quantity() + " = " + working.formula() + " = " + plain(working.number()) + " " + working.unit();
    }

    private static String inVolume(String acid, StockAcid stock, BigDecimal percent) {
        return acid + " = g/L / " + plain(stock.gramsPerLitre()) + " g/L in the " + plain(stock.weightPercent())
                + " % concentrate x 100 = " + percent.toPlainString() + " vol %";
    }

    private static BigDecimal percent(double percent) {
        return BigDecimal.valueOf(percent).setScale(2, RoundingMode.HALF_EVEN);
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).round(new MathContext(4)).stripTrailingZeros().toPlainString();
    }
}
