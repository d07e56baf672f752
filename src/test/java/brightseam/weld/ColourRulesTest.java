package brightseam.weld;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ColourRulesTest {

    private static final AcceptanceTable TABLE = Weld.SCALE.table("shop-a").orElseThrow();

    private static ColourVerdict judge(Optional<String> band, String... weld) {
        return ColourRules.judge(TABLE, new ColoursSeen(true, List.of(weld), band));
    }

    @Test
    void the_worst_of_weld_and_edge_decides() {
        assertEquals(new ColourVerdict.Accept(), judge(Optional.of("bronze"), "silver"));
        assertEquals(new ColourVerdict.Conditional(List.of("bronze"), List.of("the lead has to accept bronze by name")),
                judge(Optional.of("silver"), "silver", "bronze"));
        assertEquals(new ColourVerdict.Reject(List.of("white"), List.of("remove all of the weld")),
                judge(Optional.of("white"), "bronze", "white"));
        assertEquals(new ColourVerdict.Reject(List.of("white"), List.of("remove all of the weld")),
                judge(Optional.of("white"), "silver"));
    }

    @Test
    void what_is_not_on_the_ladder_is_not_judged() {
        assertThrows(IllegalArgumentException.class, () -> judge(Optional.empty(), "pink"));
        assertThrows(IllegalArgumentException.class, () -> judge(Optional.of("pink"), "silver"));
        assertThrows(IllegalArgumentException.class, () -> judge(Optional.empty()));
    }

    @Test
    void a_table_judges_every_colour_of_the_ladder() {
        AcceptanceTable poor = new AcceptanceTable("poor", "Poor", List.of(), Map.of(), Map.of());
        assertThrows(IllegalArgumentException.class, () -> new ColourScale(Weld.SCALE.colours(), List.of(poor),
                List.of(), Weld.SCALE.luxMin(), "of the test"));
    }
}
