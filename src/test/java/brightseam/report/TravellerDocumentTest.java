package brightseam.report;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.people.Role;
import brightseam.procedure.BinClass;
import brightseam.traveller.Disposition;
import brightseam.traveller.Handling;
import brightseam.traveller.Meaning;
import brightseam.traveller.Stories;
import brightseam.traveller.WindowEnd;
import brightseam.words.Explanation;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class TravellerDocumentTest {

    private final TravellerDocument troubled = Told.of(Stories.troubled("bare thumb on an end"));

    private StepPage step(String title) {
        return troubled.steps().stream().filter(page -> page.step().title().equals(title)).findFirst().orElseThrow();
    }

    @Test
    void a_good_record_is_told_step_by_step_with_every_signature() {
        TravellerDocument good = Told.of(Stories.closed());
        assertThat(good.steps()).hasSize(15).allMatch(StepPage::isSigned).allMatch(page -> page.passes().size() == 1);
        assertThat(good.findings()).isEmpty();
        assertThat(good.incidents()).isEmpty();
        Mark last = good.steps().getLast().passes().getFirst().mark().orElseThrow();
        assertThat(last.meaning()).isEqualTo(Meaning.INSPECTED);
        assertThat(last.actedAs()).containsExactly(Role.INSPECTOR);
        assertThat(last.stamp()).contains("Q-03");
        assertThat(last.covers()).isEqualTo("step 150 final-review, pieces 1 to 4");
        assertThat(good.chain().entries()).isEqualTo(Stories.closed().size());
    }

    @Test
    void a_hold_over_its_maximum_is_told_with_its_length_and_its_nonconformance() {
        Pass first = step("pickle").passes().getFirst();
        HoldTaken hold = first.hold().orElseThrow();
        assertThat(hold.verdict()).isEqualTo(HoldTaken.Verdict.OVER);
        assertThat(hold.lasted()).contains(Duration.ofSeconds(260));
        Finding finding = troubled.findings().getFirst();
        assertThat(finding.text()).isEqualTo("Allowed: longest hold 3 min");
        assertThat(finding.decision().orElseThrow().disposition()).isEqualTo(Disposition.USE_AS_IS);
    }

    @Test
    void a_late_entry_is_told_with_both_times_who_stated_it_and_why() {
        Pass pass = Told.of(Stories.enteredLate()).steps().getFirst().passes().getFirst();
        Pass.Late late = pass.late().orElseThrow();
        assertThat(late.doneAt()).isEqualTo(pass.startedAt().wall().minus(Duration.ofHours(1)));
        assertThat(late.mark().meaning()).isEqualTo(Meaning.STATED_LATE);
        assertThat(Phrases.late(late, java.time.ZoneOffset.UTC)).startsWith(
                "LATE ENTRY: done 4 Mar 2031 12:00:00 as Nils Oker states, entered 4 Mar 2031 13:00:00. Reason: no");
    }

    @Test
    void a_step_that_is_signed_late_is_not_told_the_bins_of_the_steps_after_it() {
        assertThat(Told.of(Stories.closed()).steps().stream().filter(page -> page.step().title().equals("pickle"))
                .flatMap(page -> page.passes().getFirst().bins().stream()).map(Pass.Stay::binClass))
                .containsOnly(BinClass.PROCESS_BASKET);
        assertThat(step("pickle").passes().getFirst().bins()).extracting(stay -> stay.bin().value())
                .containsExactly("B-0300");
    }

    @Test
    void a_piece_that_left_its_load_is_told_where_it_was_when_and_why() {
        TravellerDocument apart = Told.of(Stories.takenOut());
        Pass soak = apart.steps().stream().filter(page -> page.step().title().equals("pickle")).findFirst()
                .orElseThrow().passes().getFirst();
        assertThat(soak.bins()).extracting(stay -> stay.bin().value()).containsExactly("B-9", "B-8");
        assertThat(soak.hold().orElseThrow().lasted()).contains(Duration.ofSeconds(40));
        assertThat(apart.incidents()).singleElement().satisfies(incident ->
                assertThat(IncidentWords.of(incident)).startsWith("Piece 2 set apart from T-1042").contains("a dent"));
        assertThat(apart.findings()).extracting(Finding::pieces).containsOnly(List.of(2));
        assertThat(apart.findings().getLast().rejection().orElseThrow().meaning()).isEqualTo(Meaning.SEPARATED);
    }

    @Test
    void a_gap_that_was_not_kept_is_told_with_what_was_used_of_it() {
        GapTaken gap = step("acid-rinse").passes().getFirst().gap().orElseThrow();
        assertThat(gap.isWithin()).isFalse();
        assertThat(gap.used()).isEqualTo(Duration.ofSeconds(95));
        assertThat(gap.from()).isEqualTo("50 pickle");
        assertThat(step("acid-rinse").passes().getLast().gap().orElseThrow().isWithin()).isTrue();
    }

    @Test
    void readings_keep_what_was_out_of_limits_what_was_repeated_and_what_was_corrected() {
        List<ReadingLine> lines = step("pickle").passes().getFirst().readings();
        assertThat(lines).hasSize(2);
        assertThat(lines.getFirst().inLimits()).isFalse();
        assertThat(lines.getFirst().repeated()).isTrue();
        assertThat(lines.getLast().value()).isEqualByComparingTo("32.5");
        assertThat(lines.getLast().current()).isEqualByComparingTo("35.2");
        ReadingLine.Correction correction = lines.getLast().corrections().getFirst();
        assertThat(correction.from()).isEqualByComparingTo(new BigDecimal("32.5"));
        assertThat(correction.reason()).isEqualTo("mistyped");
        assertThat(correction.mark().name()).isEqualTo("Nils Oker");
    }

    @Test
    void rework_keeps_the_passes_that_it_superseded_and_says_where_it_went() {
        assertThat(step("degrease").passes()).hasSize(3);
        assertThat(step("degrease").passes().getFirst().superseded().orElseThrow().reason()).isEqualTo("again");
        assertThat(step("degrease").passes().getLast().superseded()).isEmpty();
        assertThat(troubled.findings().get(1).decision().orElseThrow().returnedTo()).contains("30 degrease");
        assertThat(troubled.incidents()).filteredOn(Incident.Returned.class::isInstance).hasSize(2);
        assertThat(troubled.incidents()).filteredOn(Incident.Touched.class::isInstance).hasSize(1);
    }

    @Test
    void the_clean_window_is_told_by_handling_and_with_why_it_ended() {
        List<WindowSpan> spans = troubled.window();
        assertThat(spans.getFirst().opens()).isTrue();
        assertThat(spans.getFirst().end()).contains(WindowEnd.TOUCHED);
        assertThat(spans.getFirst().left().orElseThrow())
                .isBetween(Duration.ofMinutes(214).plusSeconds(59), Duration.ofMinutes(215));
        assertThat(spans).extracting(WindowSpan::handling).contains(Handling.SEALED_BAG);
        assertThat(spans.getLast().end()).contains(WindowEnd.PASSED_IN);
    }

    @Test
    void refused_attempts_are_told_in_words() {
        assertThat(troubled.refused()).hasSize(2);
        assertThat(troubled.refused().getFirst().attempt()).isEqualTo("put in bin");
        assertThat(troubled.refused().getFirst().reasons()).extracting(Explanation::word).contains("Wrong bin");
    }

    @Test
    void a_traveller_set_apart_tells_its_parents_record_and_its_own() {
        TravellerDocument apart = Told.of(Stories.apart());
        assertThat(apart.identity().parent()).hasValueSatisfying(id -> assertThat(id.value()).isEqualTo("T-1042"));
        assertThat(apart.identity().released()).containsExactly(3);
        assertThat(apart.identity().pieces()).isEmpty();
        assertThat(apart.steps().getFirst().isSigned()).isTrue();
        assertThat(apart.findings().getFirst().rejection().orElseThrow().meaning()).isEqualTo(Meaning.REJECTED);
        assertThat(apart.incidents()).extracting(IncidentWords::of).anyMatch(words ->
                words.startsWith("Piece 3 set apart from T-1042")).contains("Piece 3 scrapped.");
        assertThat(apart.chain().entries()).isEqualTo(Stories.apart().size());
    }

    @Test
    void everybody_who_signed_is_listed_with_the_roles_held_then() {
        assertThat(troubled.authority()).extracting(Authority::name)
                .containsExactly("Nils Oker", "Ada Roem", "Ida Quell");
        assertThat(troubled.authority().getFirst().meanings())
                .containsExactly(Meaning.PERFORMED, Meaning.CORRECTED);
    }
}
