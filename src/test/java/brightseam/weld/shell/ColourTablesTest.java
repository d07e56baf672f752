package brightseam.weld.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.weld.AcceptanceTable;
import brightseam.weld.ColourRules;
import brightseam.weld.ColourScale;
import brightseam.weld.ColoursSeen;
import brightseam.weld.FindingKind;
import brightseam.weld.Ruling;
import brightseam.weld.WeldColour;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The shared table of colours against the passages that its rows cite. */
class ColourTablesTest {

    private final ColourScale scale = ColourTables.read(Optional.empty(), List.of());

    private Ruling weld(String colour) {
        AcceptanceTable table = scale.table("iso-9606-5").orElseThrow();
        return ColourRules.judge(table, new ColoursSeen(true, List.of(colour), Optional.empty())).ruling();
    }

    /** EN ISO 9606-5:2000 as quoted on eng-tips.com; the ladder's names for what it calls straw, purple and blue. */
    @Test
    void silver_and_straw_are_accepted_and_brown_purple_blue_grey_and_white_rejected() {
        List.of("silver", "light-straw", "dark-straw").forEach(one -> assertEquals(Ruling.ACCEPT, weld(one), one));
        List.of("brown", "violet", "dark-blue", "light-blue", "grey", "white")
                .forEach(one -> assertEquals(Ruling.REJECT, weld(one), one));
    }

    @Test
    void what_the_standard_does_not_name_is_left_to_somebody_who_may_decide() {
        assertEquals(Ruling.CONDITIONAL, weld("bronze"));
    }

    /** The same passage: a narrow band of intense colour at the edge of the gas shield is accepted. */
    @Test
    void a_narrow_band_at_the_edge_of_the_shield_is_accepted_and_powder_never() {
        AcceptanceTable table = scale.table("iso-9606-5").orElseThrow();
        assertEquals(Ruling.ACCEPT, ColourRules.judge(
                table, new ColoursSeen(true, List.of("silver"), Optional.of("dark-blue"))).ruling());
        assertEquals(Ruling.REJECT, ColourRules.judge(
                table, new ColoursSeen(true, List.of("silver"), Optional.of("white"))).ruling());
    }

    @Test
    void colours_are_told_apart_by_name_and_pattern_alone() {
        assertEquals(scale.colours().size(), scale.colours().stream().map(WeldColour::pattern).distinct().count());
        assertEquals(scale.colours().size(), scale.colours().stream().map(WeldColour::name).distinct().count());
    }

    /** MIL-STD-2219A, 5.4.5.2. */
    @Test
    void a_crack_in_the_base_metal_is_never_forgiven() {
        FindingKind crack = scale.finding("crack-in-base-metal").orElseThrow();
        assertEquals(Ruling.REJECT, crack.ruling());
        assertFalse(crack.forgivable());
        assertTrue(crack.source().contains("5.4.5.2"));
    }

    @Test
    void a_rejection_says_what_comes_next() {
        scale.tables().forEach(table -> table.weld().forEach((colour, row) ->
                assertEquals(row.ruling() == Ruling.ACCEPT, row.next().isEmpty(), colour)));
    }
}
