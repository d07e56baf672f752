package brightseam.report;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.traveller.Stories;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.TravellerEvent.JointWelded;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChamberPartTest {

    private static final ChamberPart PART = Told.inTheChamber(Stories.inTheChamber()).chamber();

    @Test
    void it_tells_how_the_lot_came_in_each_time_and_what_went_through_the_lock() {
        assertThat(PART.entries()).extracting(ChamberPart.Entry::way).containsExactly("lock pass 1", "lock pass 1");
        assertThat(PART.locks()).singleElement().satisfies(pass -> assertThat(JointWords.pass(pass, ZoneOffset.UTC))
                .contains("Lock pass 1, in, session CS-0012 at S-LOCK-1", "Purged: 3 cycles from 0.1 bar to 1 bar",
                        "oxygen in the lock before the second door 22.0 ppm",
                        "highest in the chamber after it 14.5 ppm"));
    }

    @Test
    void each_run_of_each_joint_stands_with_its_pieces_and_its_evidence() {
        assertThat(PART.joints()).extracting(joint -> JointWords.heading(joint) + " " + joint.pieces())
                .containsExactly("Joint K-07.J03, run 1 [1, 2]", "Joint K-07.J04, run 1 [3]",
                        "Joint K-07.J05, run 1 [4]", "Joint K-07.J05, run 2 [4]");
        assertThat(JointWords.evidence(PART.joints().getFirst())).containsExactly("Oxygen during the arc, meter G-0701:"
                + " highest 21.5 ppm, mean over time 16.0 ppm, limit 30.0 ppm, never above it; proven over the whole"
                + " time. SHA-256 of the readings abababababababab…", "Oxygen while it cooled, meter G-0701:"
                + " highest 18.5 ppm, mean over time 12.1 ppm, limit 30.0 ppm, never above it; proven over the whole"
                + " time. SHA-256 of the readings abababababababab…");
        assertThat(JointWords.evidence(PART.joints().get(1)).getFirst()).startsWith("Oxygen while hot, meter")
                .contains("ABOVE IT for 4.0 s (6.0 to 10.0 s, 48.0 ppm after the arc began)");
        assertThat(PART.joints()).extracting(JointTaken::isInOrder).containsExactly(true, false, true, true);
        assertThat(JointWords.made(PART.joints().getFirst(), ZoneOffset.UTC)).contains("Of this lot pieces 1, 2; with"
                + " T-1050 piece 1.", "by Nils Oker (P-0001), filler ERTi-2, back side purged. Arc ", " for 20.0 s");
        assertThat(PART.pending()).isEmpty();
    }

    @Test
    void verdicts_stand_with_colour_light_photographs_and_a_signature() {
        assertThat(PART.joints().get(2).verdicts()).singleElement().satisfies(judged -> {
            assertThat(JointWords.verdict(judged.verdict())).isEqualTo("REJECTED: colour dark blue; undercut 0.2 mm."
                    + " Judged by Workshop specification HDF-W-3, revision 2, light 1100 lx at the joint; photographs:"
                    + " J03 root (cdcdcdcdcdcdcdcd…). Repair once, then ask the lead.");
            assertThat(judged.mark().name()).isEqualTo("Ida Quell");
        });
        assertThat(PART.joints().get(1).verdicts()).isEmpty();
    }

    @Test
    void gas_filler_and_meters_stand_once_with_the_day_of_their_calibration() {
        assertThat(PART.gear()).extracting(gear -> gear.contact().label() + ": " + JointWords.lastDay(gear))
                .containsExactly("F-0004: no day registered", "A-0031: no day registered",
                        "G-0701: calibrated until 30 Sep 2031");
    }

    @Test
    void the_chart_shows_the_readings_against_the_limit_with_the_arc_and_nothing_where_nothing_was_read() {
        JointTaken joint = PART.joints().get(1);
        assertThat(joint.chart(ZoneOffset.UTC).words().replace('\u00a0', ' '))
                .contains("limit of 30 ppm", "highest 48 ppm", "1 gap in the readings");
        assertThat(joint.chart(ZoneOffset.UTC).svg()).contains("limit 30", "arc");
        assertThat(joint.readings()).hasSize(108).as("111 seconds with both ends, without three");
    }

    @Test
    void an_arc_without_evidence_is_named_and_a_lot_that_was_never_inside_has_no_such_part() {
        List<TravellerEvent> record = Stories.inTheChamber();
        int first = record.stream().filter(JointWelded.class::isInstance).map(record::indexOf).findFirst()
                .orElseThrow();
        assertThat(Told.inTheChamber(record.subList(0, first)).chamber().pending()).singleElement()
                .satisfies(pending -> assertThat(pending.arc().joint().number()).isEqualTo("J03"));
        assertThat(Told.of(Stories.closed()).chamber().isEmpty()).isTrue();
    }

    @Test
    void the_clean_window_says_that_it_ran_on_in_the_chamber_as_in_the_bag() {
        assertThat(Told.inTheChamber(Stories.inTheChamber()).window()).extracting(WindowWords::kept)
                .contains("in the chamber, reckoned as in a sealed bag");
    }
}
