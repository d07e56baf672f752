package brightseam.demo;

import static brightseam.demo.DemoPerson.TESSA_QUARLE;

import brightseam.bath.AcidContent;
import brightseam.bath.AcidTitration;
import brightseam.bath.BathAnalysis.Assumptions;
import brightseam.bath.FluorideBasis;
import brightseam.bath.FluorideReading;
import brightseam.bath.FluorideReading.Titrant;
import brightseam.bath.Acid;
import brightseam.bath.BathAnalysis;
import brightseam.bath.TitaniumAcidity;
import brightseam.bath.VolumeStrength;
import brightseam.line.AcidSample;
import brightseam.line.Addend;
import brightseam.line.Addition;
import brightseam.line.BathCommand;
import brightseam.line.BathQuantity;
import brightseam.line.shell.Baths;
import brightseam.traveller.shell.ProcessControl;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/**
 * Three weeks of the demo shop's baths before its first traveller: what wears out, what was added, and one analysis out
 * of limits. The loads of that time are on paper. All invented.
 */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class BathPast {

    /** How long it is. */
    static final Duration LENGTH = Duration.ofDays(21);

    private static final int WEAK_DAY = 11;
    private static final double HYDROXIDE_MOLES_PER_LITRE = 1.0;
    private static final double LANTHANUM_MOLES_PER_LITRE = 0.1;
    private static final double SAMPLE_MILLILITRES = 5;

    private final Baths baths;
    private final ProcessControl control;
    private final Crew crew;
    private final Story story;
    private final RandomGenerator chance = RandomGeneratorFactory.of("L64X128MixRandom").create(2209);

    BathPast(Baths baths, ProcessControl control, Crew crew, Story story) {
        this.baths = baths;
        this.control = control;
        this.crew = crew;
        this.story = story;
    }

    /** Plays it; it lasts {@link #LENGTH}, but for what the machine itself took. */
    void play() {
        for (DemoBath bath : DemoBath.values()) {
            Crew.done(baths.execute(new BathCommand.RegisterBath(bath.station(), bath.liquid(), bath.volumeLitres(),
                    bath.basketsAtOnce(), bath.terms(), crew.origin(TESSA_QUARLE), crew.signer(TESSA_QUARLE))));
        }
        for (int day = 0; day < LENGTH.toDays(); day++) {
            story.pass(Duration.ofDays(1));
            waters(day);
            if (day % 7 == 6) {
                enter(DemoBath.DEGREASE, "C-" + (day + 101), "kit titration and meter", Map.of(
                        BathQuantity.TEMPERATURE, about(70, 2, 0), BathQuantity.PH, about(12.2, 0.2, 1),
                        BathQuantity.CLEANER_STRENGTH, about(6.4 - 0.05 * day, 0.2, 1)), List.of());
            }
            pickle(day);
        }
    }

    private void waters(int day) {
        if (day % 2 == 0) {
            water(DemoBath.RINSE, "W-" + (day + 101), about(240 + 3 * day, 25, 0), about(38, 6, 0), about(7.6, 0.3, 1));
            water(DemoBath.ACID_RINSE, "W-" + (day + 201), about(310, 60, 0), about(41, 6, 0), about(6.9, 0.4, 1));
            water(DemoBath.DEIONISED, "D-" + (day + 101), about(3 + 0.3 * day, 0.6, 1), about(0.4, 0.1, 1),
                    about(6.6, 0.3, 1));
        }
    }

    private void water(
            DemoBath bath, String sample, BigDecimal conductivity, BigDecimal chloride, BigDecimal acidity) {
        enter(bath, sample, "meter and test kit", Map.of(BathQuantity.CONDUCTIVITY, conductivity,
                BathQuantity.CHLORIDE, chloride, BathQuantity.PH, acidity), List.of());
    }

    /** Every third day; hydrofluoric acid falls until it is topped up, once too late. */
    private void pickle(int day) {
        if (day % 3 == 2) {
            boolean weak = day == WEAK_DAY;
            titrate("A-" + (day + 301), 25.4 - 0.12 * day, weak ? 0.9 : 1.75 - 0.2 * (day / 3 % 3), 2 + 0.28 * day);
            if (weak || day % 9 == 8) {
                Crew.done(baths.execute(new BathCommand.RecordAddition(DemoBath.PICKLE.station(), new Addition(
                        Addend.HYDROFLUORIC_ACID, new BigDecimal(weak ? "3.8" : "1.8"),
                        weak ? "below the minimum" : "used up by titanium",
                        List.of()), crew.origin(TESSA_QUARLE), crew.signer(TESSA_QUARLE))));
                story.pass(Duration.ofMinutes(40));
                titrate("A-" + (day + 301) + ".2", 25.2 - 0.12 * day, weak ? 1.7 : 1.75, 2 + 0.28 * day);
            }
        }
    }

    private void titrate(String sample, double nitricPercent, double hydrofluoricPercent, double titanium) {
        AcidContent content = AcidSample.STOCKS.content(new VolumeStrength(nitricPercent, hydrofluoricPercent));
        double fluoride = content.hydrofluoricGramsPerLitre() / Acid.HYDROFLUORIC.gramsPerMole();
        double acid = content.nitricGramsPerLitre() / Acid.NITRIC.gramsPerMole() + fluoride
                + 2 * titanium / BathAnalysis.TITANIUM_GRAMS_PER_MOLE;
        double hydroxide = read(acid * SAMPLE_MILLILITRES / HYDROXIDE_MOLES_PER_LITRE);
        double lanthanum = read(fluoride * SAMPLE_MILLILITRES
                / (Titrant.LANTHANUM_NITRATE.fluoridesPerMetal() * LANTHANUM_MOLES_PER_LITRE));
        AcidSample found = AcidSample.of(
                new AcidTitration(SAMPLE_MILLILITRES, HYDROXIDE_MOLES_PER_LITRE, hydroxide, 0),
                new FluorideReading.Precipitation(
                        Titrant.LANTHANUM_NITRATE, LANTHANUM_MOLES_PER_LITRE, lanthanum, SAMPLE_MILLILITRES),
                new Assumptions(rounded(titanium, 1).doubleValue(), FluorideBasis.FREE,
                        TitaniumAcidity.COMPLEX_WHOLE));
        SortedMap<BathQuantity, BigDecimal> values = new TreeMap<>(((AcidSample.Found) found).values());
        values.put(BathQuantity.TEMPERATURE, about(31, 2, 0));
        enter(DemoBath.PICKLE, sample, "hydroxide and lanthanum nitrate", values, found.workings());
    }

    /** As a burette shows it, to 0.05 mL. */
    private static double read(double millilitres) {
        return Math.round(millilitres * 20) / 20.0;
    }

    private void enter(DemoBath bath, String sample, String method, Map<BathQuantity, BigDecimal> values,
            List<String> workings) {
        Crew.done(control.enterAnalysis(crew.actor(TESSA_QUARLE), bath.station(), new ProcessControl.Entered(
                sample, method, Duration.ofMinutes(1), new TreeMap<>(values), workings), crew.signer(TESSA_QUARLE)));
    }

    private BigDecimal about(double value, double scatter, int decimals) {
        return rounded(value + scatter * (2 * chance.nextDouble() - 1), decimals);
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
