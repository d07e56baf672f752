package brightseam.ui.trace;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.TravellerId;
import brightseam.procedure.Procedure;
import brightseam.trace.Reach;
import brightseam.trace.Reached;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.Touch;
import brightseam.trace.TouchLog;
import brightseam.trace.TraceQuestion;
import brightseam.trace.Whereabouts;
import brightseam.traveller.Stories;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.shell.Card;
import brightseam.ui.parts.SpanChart;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TraceAnswersTest {

    private static final ZoneId UTC = ZoneId.of("UTC");
    private static final Instant NOON = Instant.parse("2031-03-04T12:00:00Z");

    @Test
    void what_is_scrapped_and_what_is_already_suspect_for_the_reason_is_left_out_and_said() {
        List<Touch> touches = TouchLog.of(Stories.closed()).touches();
        Reach reach = new Reach(TraceQuestion.of(Thing.of(ThingKind.HEAT, "H-1")),
                List.of(reached(Stories.closed()), reached(Stories.apart())));
        Marking marking = Marking.of(reach, touches, Set.of());
        assertThat(marking.touched()).containsOnlyKeys(new TravellerId("T-1042"));
        assertThat(marking.words()).isEqualTo(
                "1 traveller with 4 pieces: 0 on the way, 0 in the chamber, 1 closed. 1 scrapped, left out.");
        Marking again = Marking.of(reach, touches, Set.of(new TravellerId("T-1042")));
        assertThat(again.touched()).isEmpty();
        assertThat(again.words()).contains("1 already suspect for this reason");
    }

    @Test
    void the_step_of_the_first_contact_goes_with_the_suspicion() {
        List<Touch> benches = TouchLog.of(Stories.closed()).touches().stream()
                .filter(touch -> touch.thing().kind() == ThingKind.STATION).toList();
        Reach reach = new Reach(TraceQuestion.of(benches.getFirst().thing()), List.of(reached(Stories.closed())));
        assertThat(Marking.of(reach, benches, Set.of()).touched().values())
                .containsExactly(benches.getFirst().step());
    }

    @Test
    void answers_are_counted_in_words() {
        Reach reach = new Reach(TraceQuestion.of(Thing.of(ThingKind.HEAT, "H-1")),
                List.of(reached(Stories.closed()), reached(Stories.apart())));
        assertThat(TraceWords.counts(reach)).isEqualTo("8 pieces of 2 travellers, 1 kit, 2 contacts."
                + " Travellers now: 1 closed, 1 scrapped.");
        assertThat(TraceWords.thing(new Thing(ThingKind.BATH, "S-ACID-1", "fill 3")))
                .isEqualTo("bath S-ACID-1, fill 3");
        assertThat(TraceWords.thing(new Thing(ThingKind.GLOVES, "G-0031", "77/A")))
                .isEqualTo("gloves G-0031, lot 77/A");
        assertThat(TraceWords.when(NOON, Optional.of(NOON.plusSeconds(90)), UTC))
                .isEqualTo("4 Mar 2031 12:00:00 to 12:01:30");
        assertThat(TraceWords.when(NOON, Optional.empty(), UTC)).isEqualTo("since 4 Mar 2031 12:00:00");
    }

    @Test
    void suspects_come_by_reason_and_rework_goes_only_where_all_may_go() {
        Procedure procedure = Stories.procedure();
        Card one = new Card(Stories.state(Stories.suspectAt("pickle", "Bath bad")).orElseThrow(), procedure, 9);
        Card other = new Card(Stories.state(Stories.suspectAt("white-cloth", "Cloth bad")).orElseThrow(), procedure, 9);
        List<Suspects> groups = Suspects.among(List.of(one, other));
        assertThat(groups).extracting(Suspects::reason).containsExactlyInAnyOrder("Bath bad", "Cloth bad");
        Suspects.One bath = groups.stream().filter(group -> group.reason().equals("Bath bad")).findFirst()
                .orElseThrow().all().getFirst();
        Suspects.One cloth = groups.stream().filter(group -> group.reason().equals("Cloth bad")).findFirst()
                .orElseThrow().all().getFirst();
        assertThat(Suspects.returns(List.of(bath))).isNotEmpty().isEqualTo(List.copyOf(bath.returns()));
        assertThat(Suspects.returns(List.of(bath, cloth))).allSatisfy(step ->
                assertThat(bath.returns().contains(step) && cloth.returns().contains(step)).isTrue());
        assertThat(Suspects.returns(List.of(bath, cloth)).size())
                .isLessThan(bath.returns().size() + cloth.returns().size());
        assertThat(Suspects.returns(List.of())).isEmpty();
    }

    @Test
    void a_picture_has_a_row_for_each_thing_and_stripes_with_the_word_for_each_suspect() {
        List<Touch> touches = TouchLog.of(Stories.closed()).touches();
        SpanChart pieces = Pictures.ofPieces("piece 1", touches, NOON, UTC);
        assertThat(pieces.rows()).hasSameSizeAs(touches.stream().map(Touch::thing)
                .filter(thing -> thing.kind() != ThingKind.HEAT && thing.kind() != ThingKind.KIT).distinct().toList());
        assertThat(pieces.rows().stream().mapToInt(row -> row.bars().size()).sum()).isEqualTo(touches.size() - 2);
        Reached suspect = reached(Stories.suspectAt("pickle", "Bath bad"));
        SpanChart.Row row = Pictures.ofThing("the bath", List.of(suspect), touches, NOON, UTC).rows().getFirst();
        assertThat(row.marked()).isTrue();
        assertThat(row.label()).endsWith("suspect");
    }

    @Test
    void a_list_holds_every_contact_and_no_cell_runs_as_a_formula() {
        List<Touch> touches = TouchLog.of(Stories.closed()).touches();
        assertThat(TraceCsv.touches(touches).lines()).hasSize(1 + touches.size());
        Touch odd = new Touch(new TravellerId("T-1"), new TravellerId("T-1"), List.of(1),
                new Thing(ThingKind.GLOVES, "G-1", "=1+1"), "latex", Optional.empty(), 0, Optional.empty(), NOON,
                Optional.empty());
        assertThat(TraceCsv.touches(List.of(odd))).contains("'=1+1").doesNotContain(",=");
    }

    private static Reached reached(List<TravellerEvent> record) {
        Traveller traveller = Stories.state(record).orElseThrow();
        return new Reached(Whereabouts.of(traveller), 1, 4, NOON, Optional.empty());
    }
}
