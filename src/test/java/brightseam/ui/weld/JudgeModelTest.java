package brightseam.ui.weld;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.weld.Judgement;
import brightseam.weld.Ruling;
import brightseam.weld.Verdict;
import brightseam.weld.Weld;
import brightseam.weld.shell.Judging;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JudgeModelTest {

    private final JudgeModel model = new JudgeModel(Weld.SCALE, Weld.plan());

    private String wrong(String lux, String meter) {
        return assertThrows(IllegalArgumentException.class, () -> model.judging(Verdict.ACCEPT, lux, meter, ""))
                .getMessage();
    }

    @Test
    void it_asks_for_a_colour_and_then_says_what_the_table_says_of_the_worst_one() {
        assertEquals(List.of("Touch every colour that the weld shows."), model.ruledBy());
        assertEquals(Optional.empty(), model.ruling());
        assertTrue(model.touchWeld("silver"));
        assertEquals(List.of("Shop's table A accepts these colours."), model.ruledBy());
        model.touchWeld("white");
        assertEquals(List.of("Shop's table A rejects white. Next: remove all of the weld."), model.ruledBy());
        assertFalse(model.touchWeld("white"));
        assertEquals(Optional.of(Ruling.ACCEPT), model.ruling());
    }

    @Test
    void a_band_is_one_colour_or_none() {
        model.touchWeld("silver");
        assertTrue(model.touchBand("bronze"));
        assertTrue(model.touchBand("white"));
        assertEquals(Optional.of(Ruling.REJECT), model.ruling());
        assertFalse(model.touchBand("white"));
        assertEquals(Optional.of(Ruling.ACCEPT), model.ruling());
    }

    @Test
    void findings_make_the_ruling_worse_and_say_what_comes_next() {
        model.touchWeld("silver");
        model.found("undercut", Optional.of("0.1 mm"));
        assertEquals(Optional.of(Ruling.CONDITIONAL), model.ruling());
        assertEquals("Undercut: its size decides. measure its depth.", model.ruledBy().getLast());
        model.found("crack", Optional.of("4 mm"));
        assertEquals(Optional.of(Ruling.REJECT), model.ruling());
        assertEquals("Crack in the base metal rejects it. Next: no repair.", model.ruledBy().getLast());
        model.found("crack", Optional.empty());
        assertEquals(Optional.of(Ruling.CONDITIONAL), model.ruling());
    }

    @Test
    void nothing_is_sent_before_colour_brushing_light_and_meter_are_said() {
        assertEquals("touch every colour that the weld shows", wrong("1200", "G-0301"));
        model.touchWeld("silver");
        assertEquals("say whether it was looked at before anything was brushed", wrong("1200", "G-0301"));
        model.brushed(true);
        assertEquals("light: measure it and type the lux", wrong("bright", "G-0301"));
        assertEquals("light meter: scan or type its label", wrong("1200", " "));
        model.found("undercut", Optional.of(" "));
        assertEquals("finding: between 1 and 200 characters", wrong("1200", "G-0301"));
        model.found("undercut", Optional.of("0.1 mm"));
        Judging sent = model.judging(Verdict.REJECT, "1200,5", "g-0301", "  ");
        assertEquals(new BigDecimal("1200.5"), sent.lighting().lux());
        assertEquals(Weld.LIGHT_METER, sent.lighting().meter());
        assertEquals(Optional.empty(), sent.remark());
        assertTrue(sent.colours().beforeBrushing());
    }

    @Test
    void photographs_are_taken_once_each_and_as_many_as_a_judgement_holds() {
        for (int i = 0; i < Judgement.PHOTOGRAPHS_MAX; i++) {
            assertTrue(model.photograph("%064d".formatted(i)));
        }
        assertFalse(model.photograph("%064d".formatted(99)));
        model.withoutPhotograph("%064d".formatted(3));
        assertFalse(model.photograph("%064d".formatted(4)));
        assertTrue(model.photograph("%064d".formatted(99)));
    }
}
