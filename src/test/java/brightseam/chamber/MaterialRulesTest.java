package brightseam.chamber;

import static brightseam.chamber.Gear.MATERIALS;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.SupplyId;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MaterialRulesTest {

    private static Optional<Map<String, String>> objection(String material) {
        return MaterialRules.objections(new ChamberItem(new SupplyId("G-0700"), "Clamp", Optional.ofNullable(material)),
                Gear.chamber(), MATERIALS).stream().findFirst().map(ChamberRefusal::evidence);
    }

    @Test
    void what_the_list_has_goes_in() {
        assertThat(objection("stainless-steel")).isEmpty();
    }

    @Test
    void what_may_not_go_in_is_named_with_its_material_and_the_reason() {
        assertThat(objection("pvc").orElseThrow()).containsEntry("material", "PVC").containsEntry("title", "Clamp")
                .containsEntry("because", "it gives off much gas and reacts with titanium");
        assertThat(objection("paper").orElseThrow()).containsEntry("because", "it gives off much gas");
        assertThat(objection("carbon-steel").orElseThrow()).containsEntry("because", "it reacts with titanium");
    }

    @Test
    void what_could_be_permitted_and_is_not_stays_outside_and_so_does_what_the_table_lacks() {
        assertThat(objection("cotton").orElseThrow())
                .containsEntry("because", "it is not on the list of this chamber");
        assertThat(objection("cheese").orElseThrow())
                .containsEntry("because", "it is not on the list of this chamber");
    }

    @Test
    void what_nobody_says_the_material_of_stays_outside() {
        assertThat(MaterialRules.objections(new ChamberItem(new SupplyId("G-0700"), "Clamp", Optional.empty()),
                Gear.chamber(), MATERIALS)).extracting(ChamberRefusal::code).containsExactly("material-not-stated");
    }
}
