package brightseam.ui.weld;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.KitId;
import brightseam.kernel.Samples;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.weld.GasEvidence;
import brightseam.weld.HotSpan;
import brightseam.weld.MapJoint;
import brightseam.weld.MapSheet;
import brightseam.weld.Weld;
import brightseam.weld.WeldColour;
import brightseam.weld.WeldMap;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WeldWordsTest {

    private static final Instant AT = Samples.ORIGIN.at().wall();

    @Test
    void evidence_that_proves_says_highest_mean_limit_and_where_it_was_read() {
        assertEquals("Proven", EvidenceWords.word(Weld.clean()));
        assertEquals(List.of("Oxygen 9.1 ppm at most, 8.4 ppm in the mean; the limit is 20 ppm.",
                        "60 readings of G-0201, 08:00:00 to 08:01:00, SHA-256 000000000000…."),
                EvidenceWords.lines(Weld.clean(), ZoneOffset.UTC));
    }

    @Test
    void an_excursion_is_named_with_its_seconds_and_its_peak() {
        HotSpan span = new HotSpan(AT.plusSeconds(12), AT.plusSeconds(15), new BigDecimal("3.0"),
                Optional.of(new BigDecimal("44.0")));
        GasEvidence evidence = Weld.evidence(true, List.of(span));
        assertEquals("Above the limit", EvidenceWords.word(evidence));
        assertEquals("Above the limit for 3.0 s, 08:00:12 to 08:00:15, up to 44.0 ppm.",
                EvidenceWords.lines(evidence, ZoneOffset.UTC).get(1));
    }

    @Test
    void gaps_and_doubtful_readings_are_said_in_words() {
        HotSpan gap = new HotSpan(AT, AT.plusSeconds(9), new BigDecimal("9.0"), Optional.empty());
        GasEvidence poor = new GasEvidence(Weld.OXYGEN_METER, AT, AT.plusSeconds(60), new BigDecimal("20"),
                Optional.empty(), Optional.empty(), new BigDecimal("0.0"), List.of(), List.of(gap),
                new BigDecimal("5.0"), 40, 7, "0".repeat(64), false);
        assertEquals("Not proven", EvidenceWords.word(poor));
        List<String> lines = EvidenceWords.lines(poor, ZoneOffset.UTC);
        assertEquals("Oxygen not read at most, not read in the mean; the limit is 20 ppm.", lines.get(0));
        assertEquals("No reading that counts for 9.0 s, 08:00:00 to 08:00:09; 5.0 s are allowed.", lines.get(1));
        assertEquals("7 of 40 readings are in doubt: out of range, frozen, or the calibration was over.",
                lines.get(2));
    }

    @Test
    void a_map_names_pieces_that_no_joint_holds_and_joints_that_are_nowhere_on_its_picture() {
        Kit kit = new Kit(Weld.KIT, "Frame", Optional.empty(), List.of(line(1, 2), line(4, 2), line(5, 3)), false);
        MapJoint bare = new MapJoint("J04", "Boss", Weld.plan().jointClass(), Weld.plan().parts(),
                Weld.plan().backSide(), Optional.empty(), Optional.empty(), Weld.COOLING, "shop-a", Optional.empty());
        MapSheet sheet = new MapSheet("HDF-3200", Optional.of("0".repeat(64)), List.of(Weld.plan(), bare));
        assertEquals(List.of("Line 1 Part 1: no joint holds piece 2", "Line 4 Part 4: no joint holds piece 1",
                "Line 5 Part 5: no joint holds a piece of it"), MapNotes.unjoined(kit, sheet));
        assertEquals(List.of("J04"), MapNotes.unplaced(sheet));
        assertEquals(List.of(), MapNotes.unplaced(sheet.picturedBy(Optional.empty())));
    }

    @Test
    void a_map_says_whether_it_was_issued_and_changed_since() {
        MapSheet sheet = new MapSheet("HDF-3200", Optional.empty(), List.of(Weld.plan()));
        WeldMap.Issue issue = new WeldMap.Issue(1, sheet, Samples.ORIGIN.at(), "Lena Lead");
        assertEquals("Drawn, not issued: nothing is welded to it yet.",
                MapNotes.standing(new WeldMap(new KitId("K-1"), sheet, List.of()), ZoneOffset.UTC));
        assertFalse(MapNotes.standing(new WeldMap(new KitId("K-1"), sheet, List.of(issue)), ZoneOffset.UTC)
                .contains("changed"));
        assertTrue(MapNotes.standing(new WeldMap(new KitId("K-1"), sheet.with(List.of()), List.of(issue)),
                ZoneOffset.UTC).contains("changed since, not issued"));
    }

    @Test
    void every_pattern_is_drawn_and_no_two_look_alike_without_their_colour() {
        List<String> patterns = List.of("plain", "dots-sparse", "dots-dense", "lines-level", "lines-upright",
                "lines-rising", "lines-falling", "crosses", "waves", "checks", "flakes");
        List<String> drawn = patterns.stream().map(pattern ->
                Swatch.svg(new WeldColour("any", "Any", "#888888", pattern))).distinct().toList();
        assertEquals(patterns.size(), drawn.size());
        drawn.stream().skip(1).forEach(svg -> assertTrue(svg.length() > drawn.getFirst().length()));
    }

    private static KitLine line(int number, int quantity) {
        return new KitLine(number, "HDF-" + number, "Part " + number, "A", quantity, "TUBE", Optional.empty());
    }
}
