package brightseam.ui.stamp;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Moment;
import brightseam.traveller.Stories;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.shell.Card;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class WaitingTest {

    private static Card card(List<TravellerEvent> events) {
        return new Card(Stories.state(events).orElseThrow(), Stories.procedure(), events.size());
    }

    private static Moment end(List<TravellerEvent> events) {
        return events.getLast().at();
    }

    @Test
    void an_inspection_point_whose_turn_it_is_waits_for_a_stamp() {
        List<TravellerEvent> events = Stories.toInspect();
        Waiting row = Waiting.of(card(events), end(events)).orElseThrow();
        assertThat(row.what()).isEqualTo("Stamp for step 20 dimension");
        assertThat(row.why()).contains("nothing goes on without your stamp");
        assertThat(row.windowLeft()).isEmpty();
    }

    @Test
    void the_last_stamp_closes_the_traveller_and_says_so() {
        List<TravellerEvent> events = Stories.troubled("touched");
        assertThat(Waiting.of(card(events), end(events)).orElseThrow().why()).contains("closes the traveller");
    }

    @Test
    void an_open_nonconformance_waits_for_a_disposition_with_its_pieces() {
        List<TravellerEvent> events = Stories.rejected();
        Waiting row = Waiting.of(card(events), end(events)).orElseThrow();
        assertThat(row.what()).isEqualTo("Disposition of nonconformance 1");
        assertThat(row.why()).isEqualTo("Step 20 dimension: rejected at inspection, piece 3.");
        assertThat(row.since()).isEqualTo(end(events));
    }

    @Test
    void what_is_finished_waits_for_nobody() {
        assertThat(Waiting.of(card(Stories.closed()), end(Stories.closed()))).isEmpty();
    }

    @Test
    void what_runs_out_comes_first_though_it_has_not_waited_longest() {
        List<TravellerEvent> clean = Stories.reportedWhileClean();
        List<Waiting> rows = Waiting.among(List.of(card(Stories.rejected()), card(Stories.toInspect()), card(clean)),
                end(clean));
        assertThat(rows).hasSize(3);
        assertThat(rows.getFirst().windowLeft()).contains(Duration.ofHours(4));
        assertThat(rows.get(1).since()).isLessThanOrEqualTo(rows.get(2).since());
    }
}
