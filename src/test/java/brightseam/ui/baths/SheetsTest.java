package brightseam.ui.baths;

import brightseam.ui.desk.Numbers;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brightseam.bath.FluorideBasis;
import brightseam.bath.TitaniumAcidity;
import brightseam.bath.VolumeStrength;
import brightseam.line.Addend;
import brightseam.line.BathQuantity;
import brightseam.ui.desk.Numbers;
import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What process control keys in, and what is worked out of it. */
class SheetsTest {

    @Test
    void a_titration_gives_both_acids_in_volume_percent_of_their_concentrates_with_the_way_to_it() {
        // 25 % of a concentrate of 987 g/L is 3.916 mol/L HNO3; 1.5 % of 726 g/L is 0.5443 mol/L HF.
        Worked worked = burette("23.14", "9.07", "4").work();
        assertThat(worked.contradiction()).isEmpty();
        assertThat(worked.values().get(BathQuantity.NITRIC_ACID).doubleValue()).isCloseTo(25.0, within(0.05));
        assertThat(worked.values().get(BathQuantity.HYDROFLUORIC_ACID).doubleValue()).isCloseTo(1.5, within(0.01));
        assertThat(worked.values()).containsEntry(BathQuantity.DISSOLVED_TITANIUM, new BigDecimal("4.0"));
        assertThat(worked.workings()).anySatisfy(line -> assertThat(line).contains("23.14"))
                .anySatisfy(line -> assertThat(line).contains("2 acid equivalents each"))
                .last().asString().endsWith("vol %");
    }

    @Test
    void readings_that_contradict_each_other_give_no_values() {
        Worked worked = burette("2", "9.07", "4").work();
        assertThat(worked.values()).isEmpty();
        assertThat(worked.contradiction()).hasValueSatisfying(words -> assertThat(words).contains("more acid"));
        assertThat(worked.workings()).isNotEmpty();
    }

    @Test
    void a_field_without_a_number_is_named() {
        assertThatThrownBy(() -> burette("", "9.07", "4").work()).hasMessageContaining("sodium hydroxide used");
        assertThatThrownBy(() -> burette("2x", "9.07", "4").work()).hasMessageContaining("not 2x");
        assertThat(Numbers.decimal("any", " 12,5 ")).isEqualByComparingTo("12.5");
        assertThatThrownBy(() -> Numbers.whole("baskets", "1.5")).hasMessageContaining("whole number");
    }

    @Test
    void a_bath_that_is_weak_is_told_what_to_draw_off_and_add() {
        MakeUpSheet sheet = MakeUpSheet.acid(new BigDecimal("450"), new VolumeStrength(22, 0.9),
                new VolumeStrength(25, 1.7), new BigDecimal("450"));
        assertThat(sheet.problem()).isEmpty();
        double nitric = sheet.litres().get(Addend.NITRIC_ACID).doubleValue();
        double hydrofluoric = sheet.litres().get(Addend.HYDROFLUORIC_ACID).doubleValue();
        double stays = 450 - nitric - hydrofluoric - sheet.litres().get(Addend.WATER).doubleValue();
        assertThat(stays * 0.22 + nitric).isCloseTo(450 * 0.25, within(0.1));
        assertThat(stays * 0.009 + hydrofluoric).isCloseTo(450 * 0.017, within(0.1));
        assertThat(sheet.workings()).anySatisfy(line -> assertThat(line).startsWith("draw off first"));
    }

    @Test
    void a_new_fill_begins_with_an_empty_tank() {
        assertThat(MakeUpSheet.acid(BigDecimal.ZERO, new VolumeStrength(0, 0), new VolumeStrength(25, 2),
                new BigDecimal("400")).litres()).isEqualTo(Map.of(Addend.NITRIC_ACID, new BigDecimal("100.0"),
                        Addend.HYDROFLUORIC_ACID, new BigDecimal("8.0"), Addend.WATER, new BigDecimal("292.0")));
    }

    @Test
    void a_cleaner_is_made_stronger_and_never_weaker() {
        MakeUpSheet sheet = MakeUpSheet.cleaner(new BigDecimal("600"), new BigDecimal("4"), new BigDecimal("6"));
        double litres = sheet.litres().get(Addend.CLEANER_CONCENTRATE).doubleValue();
        assertThat((600 * 0.04 + litres) / (600 + litres)).isCloseTo(0.06, within(0.0001));
        assertThat(MakeUpSheet.cleaner(new BigDecimal("600"), new BigDecimal("6"), new BigDecimal("4")).problem())
                .isPresent();
    }

    private static Burette burette(String hydroxideUsed, String lanthanumUsed, String titanium) {
        return new Burette("5", "1", hydroxideUsed, "0",
                new Burette.Fluoride(Burette.By.LANTHANUM, lanthanumUsed, "0.1", "5", ""), titanium,
                FluorideBasis.FREE, TitaniumAcidity.COMPLEX_WHOLE);
    }
}
