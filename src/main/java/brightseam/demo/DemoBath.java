package brightseam.demo;

import static brightseam.line.BathQuantity.ACID_RATIO;
import static brightseam.line.BathQuantity.CHLORIDE;
import static brightseam.line.BathQuantity.CLEANER_STRENGTH;
import static brightseam.line.BathQuantity.CONDUCTIVITY;
import static brightseam.line.BathQuantity.DISSOLVED_TITANIUM;
import static brightseam.line.BathQuantity.HYDROFLUORIC_ACID;
import static brightseam.line.BathQuantity.NITRIC_ACID;
import static brightseam.line.BathQuantity.PH;
import static brightseam.line.BathQuantity.TEMPERATURE;

import brightseam.kernel.Limits;
import brightseam.kernel.StationId;
import brightseam.line.AnalysisDue;
import brightseam.line.BathQuantity;
import brightseam.line.BathTerms;
import brightseam.line.Liquid;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The baths of the demo shop. Volumes and intervals are invented. The acids' limits are those of the demo's procedures
 * (inside ASTM B600-91, 4.3.2, with its ten parts to one); of the waters, those of the engine standard practices manual
 * 70-00-05 (pH 6 to 10, chloride 250 ppm, 550 µS/cm; deionised for sensitive work 20 µS/cm); dissolved titanium, the
 * cleaner and the pH of deionised water are common practice.
 */
enum DemoBath {
    /** The alkaline tank. */
    DEGREASE("S-DEGREASE-1", Liquid.ALKALINE_CLEANER, "600", 2, 14, 80, Map.of(
            TEMPERATURE, limits("60", "80"), CLEANER_STRENGTH, limits("4", "8"), PH, limits("11", "13"))),
    /** The rinse behind the alkaline tank. */
    RINSE("S-RINSE-1", Liquid.RINSE_WATER, "400", 2, 7, 120, Map.of(
            CONDUCTIVITY, limits(null, "550"), CHLORIDE, limits(null, "250"), PH, limits("6", "10"))),
    /** The rinse beside the pickle tank. */
    ACID_RINSE("S-RINSE-2", Liquid.RINSE_WATER, "400", 2, 7, 120, Map.of(
            CONDUCTIVITY, limits(null, "550"), CHLORIDE, limits(null, "250"), PH, limits("6", "10"))),
    /** The pickle. */
    PICKLE("S-PICKLE-1", Liquid.PICKLING_ACID, "450", 2, 7, 40, Map.of(
            NITRIC_ACID, limits("20", "30"), HYDROFLUORIC_ACID, limits("1", "2"), ACID_RATIO, limits("10", null),
            TEMPERATURE, limits("20", "49"), DISSOLVED_TITANIUM, limits(null, "15"))),
    /** The last water. */
    DEIONISED("S-DI-1", Liquid.DEIONISED_WATER, "400", 2, 7, 120, Map.of(
            CONDUCTIVITY, limits(null, "20"), CHLORIDE, limits(null, "10"), PH, limits("5", "8"))),
    /** The drying cabinet, which is not analysed. */
    DRYER("S-DRYER-1", Liquid.AIR, "900", 4, 0, 0, Map.of());

    /** What a soak of about three minutes takes off, from about 0.06 mil a minute as a finishing shop runs it. */
    private static final BigDecimal REMOVAL_GRAM_PER_SQUARE_METRE = new BigDecimal("20");

    private final StationId station;
    private final Liquid liquid;
    private final BigDecimal volumeLitres;
    private final int basketsAtOnce;
    private final int dueDays;
    private final int dueLoads;
    private final Map<BathQuantity, Limits> limits;

    DemoBath(String station, Liquid liquid, String volumeLitres, int basketsAtOnce, int dueDays, int dueLoads,
            Map<BathQuantity, Limits> limits) {
        this.station = new StationId(station);
        this.liquid = liquid;
        this.volumeLitres = new BigDecimal(volumeLitres);
        this.basketsAtOnce = basketsAtOnce;
        this.dueDays = dueDays;
        this.dueLoads = dueLoads;
        this.limits = limits;
    }

    StationId station() {
        return station;
    }

    Liquid liquid() {
        return liquid;
    }

    BigDecimal volumeLitres() {
        return volumeLitres;
    }

    int basketsAtOnce() {
        return basketsAtOnce;
    }

    BathTerms terms() {
        SortedMap<BathQuantity, Limits> sorted = new TreeMap<>(limits);
        AnalysisDue due = dueDays == 0 ? AnalysisDue.never() : new AnalysisDue(
                Optional.of(Duration.ofDays(dueDays)), Optional.of(dueLoads), Optional.empty());
        return new BathTerms(sorted, due,
                Optional.of(REMOVAL_GRAM_PER_SQUARE_METRE).filter(gram -> liquid == Liquid.PICKLING_ACID));
    }

    private static Limits limits(String minimum, String maximum) {
        return new Limits(Optional.ofNullable(minimum).map(BigDecimal::new),
                Optional.ofNullable(maximum).map(BigDecimal::new));
    }
}
