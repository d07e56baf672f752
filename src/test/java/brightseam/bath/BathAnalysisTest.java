package brightseam.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brightseam.bath.BathAnalysis.Assumptions;
import brightseam.bath.FluorideReading.Titrant;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BathAnalysisTest {

    /** A handbook on pickling: 5 mL of bath against 1.02 N hydroxide, and each mL is 1 g H2SO4 in 100 mL of bath. */
    @Test
    void total_acid_agrees_with_a_handbooks_factor_for_sulphuric_acid() {
        double gramsOfAnEquivalent = 98.07 / 2;
        double gramsPerLitre = new AcidTitration(5, 1.02, 1, 0).equivalentsPerLitre() * gramsOfAnEquivalent;
        assertThat(gramsPerLitre / 10).isCloseTo(1.0, within(0.001));
    }

    /** A maker of electrodes: about 9 mL of 0.1 mol/L fluoride for the standardising of 0.1 mol/L lanthanum: 3 mL. */
    @Test
    void three_millilitres_of_lanthanum_take_nine_of_fluoride() {
        FluorideReading reading = new FluorideReading.Precipitation(Titrant.LANTHANUM_NITRATE, 0.1, 3, 9);
        assertThat(reading.fluorideMolesPerLitre()).isCloseTo(0.1, within(1e-12));
        assertThat(new FluorideReading.Precipitation(Titrant.THORIUM_NITRATE, 0.1, 3, 9).fluorideMolesPerLitre())
                .isCloseTo(0.4 / 3, within(1e-12));
    }

    @Test
    void a_fresh_bath_is_worked_out_line_by_line() {
        BathAnalysis answer = BathAnalysis.of(new AcidTitration(2, 1, 14.0, 0.1),
                FluorideReading.Electrode.ofMilligrams(26.5972, 1, 1000), Assumptions.FRESH_BATH);
        assertThat(answer.workings()).extracting(Working::quantity)
                .containsExactly("total acid", "fluoride", "titanium", "free HF", "HNO3", "HNO3", "HF");
        assertThat(answer.workings()).extracting(Working::unit)
                .containsExactly("mol/L", "mol/L", "mol/L", "mol/L", "mol/L", "g/L", "g/L");
        assertThat(answer.workings().getFirst().formula())
                .isEqualTo("c(NaOH) x V / sample = 1.0 mol/L x (14.0 - 0.1) mL / 2.0 mL");
        AcidContent content = ((BathAnalysis.Found) answer).content();
        assertThat(content.nitricGramsPerLitre()).isCloseTo((6.95 - 1.4) * 63.013, within(0.001));
        assertThat(content.hydrofluoricGramsPerLitre()).isCloseTo(1.4 * 20.006, within(0.001));
        assertThat(answer.workings().getLast().number()).isEqualTo(content.hydrofluoricGramsPerLitre());
    }

    /** Burette readings are made from a bath that is known, by counting moles; the arithmetic has to find it again. */
    @Test
    void a_known_bath_is_found_again_by_every_method() {
        Random random = new Random(41);
        for (int round = 0; round < 3000; round++) {
            AcidContent bath = new AcidContent(400 * random.nextDouble(), 60 * random.nextDouble());
            Assumptions assumed = new Assumptions(20 * random.nextDouble(), pick(random, FluorideBasis.values()),
                    pick(random, TitaniumAcidity.values()));
            double titanium = assumed.titaniumGramsPerLitre() / 47.867;
            double freeFluoride = bath.hydrofluoricGramsPerLitre() / 20.006;
            double found = assumed.fluoride() == FluorideBasis.TOTAL ? freeFluoride + 6 * titanium : freeFluoride;
            double acid = bath.nitricGramsPerLitre() / 63.013 + freeFluoride + titanium
                    * switch (assumed.acidity()) {
                        case NOT_COUNTED -> 0;
                        case COMPLEX_WHOLE -> 2;
                        case COMPLEX_BROKEN -> 6;
                    };
            double blank = 0.2 * random.nextDouble();
            BathAnalysis answer = BathAnalysis.of(
                    new AcidTitration(1, 0.5, acid / 0.5 + blank, blank), reading(random, found), assumed);
            AcidContent content = ((BathAnalysis.Found) answer).content();
            assertThat(content.nitricGramsPerLitre()).isCloseTo(bath.nitricGramsPerLitre(), within(1e-6));
            assertThat(content.hydrofluoricGramsPerLitre()).isCloseTo(bath.hydrofluoricGramsPerLitre(), within(1e-6));
        }
    }

    @Test
    void readings_that_contradict_each_other_are_not_made_into_a_bath() {
        FluorideReading much = new FluorideReading.Electrode(0.01, 1, 100);
        assertThat(BathAnalysis.of(new AcidTitration(1, 1, 0.75, 0), much, Assumptions.FRESH_BATH))
                .isInstanceOfSatisfying(BathAnalysis.LessAcidThanFluoride.class,
                        no -> assertThat(no.molesPerLitre()).isCloseTo(0.25, within(1e-9)));
        Assumptions spent = new Assumptions(47.867, FluorideBasis.TOTAL, TitaniumAcidity.COMPLEX_WHOLE);
        assertThat(BathAnalysis.of(new AcidTitration(1, 1, 9, 0), much, spent))
                .isInstanceOfSatisfying(BathAnalysis.LessFluorideThanTitaniumBinds.class, no -> {
                    assertThat(no.molesPerLitre()).isCloseTo(5, within(1e-9));
                    assertThat(no.workings()).extracting(Working::quantity).contains("free HF");
                });
    }

    @Test
    void more_titanium_assumed_never_gives_more_acid() {
        AcidTitration acid = new AcidTitration(1, 1, 8, 0);
        FluorideReading fluoride = new FluorideReading.Electrode(0.02, 1, 100);
        double nitric = Double.POSITIVE_INFINITY;
        for (int grams = 0; grams <= 15; grams++) {
            AcidContent content = ((BathAnalysis.Found) BathAnalysis.of(acid, fluoride,
                    new Assumptions(grams, FluorideBasis.FREE, TitaniumAcidity.COMPLEX_WHOLE))).content();
            assertThat(content.nitricGramsPerLitre()).isLessThan(nitric);
            nitric = content.nitricGramsPerLitre();
        }
    }

    @Test
    void readings_that_no_glass_gives_are_refused() {
        assertThatThrownBy(() -> new AcidTitration(0, 1, 1, 0)).hasMessageContaining("sample");
        assertThatThrownBy(() -> new AcidTitration(1, 1, 1, 1.1)).hasMessageContaining("blank");
        assertThatThrownBy(() -> new AcidTitration(1, Double.NaN, 1, 0)).hasMessageContaining("hydroxide");
        assertThatThrownBy(() -> new FluorideReading.Electrode(0.1, 10, 5)).hasMessageContaining("sample");
        assertThatThrownBy(() -> new FluorideReading.Precipitation(Titrant.LANTHANUM_NITRATE, 0, 1, 1))
                .hasMessageContaining("titrant");
        assertThatThrownBy(() -> new Assumptions(-1, FluorideBasis.FREE, TitaniumAcidity.NOT_COUNTED))
                .hasMessageContaining("titanium");
    }

    private static FluorideReading reading(Random random, double molesPerLitre) {
        return switch (random.nextInt(3)) {
            case 0 -> new FluorideReading.Electrode(molesPerLitre / 50, 2, 100);
            case 1 -> new FluorideReading.Precipitation(Titrant.LANTHANUM_NITRATE, 0.2, molesPerLitre / 0.6, 1);
            default -> new FluorideReading.Precipitation(Titrant.THORIUM_NITRATE, 0.1, molesPerLitre / 0.4, 1);
        };
    }

    private static <T> T pick(Random random, T[] values) {
        return values[random.nextInt(values.length)];
    }
}
