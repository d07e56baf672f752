package brightseam.ui.stamp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.people.Role;
import brightseam.traveller.Disposition;
import brightseam.traveller.NextAction;
import brightseam.traveller.Stories;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.shell.Card;
import java.util.List;
import org.junit.jupiter.api.Test;

class AskTest {

    private static Ask of(List<TravellerEvent> events) {
        return Ask.of(new Card(Stories.state(events).orElseThrow(), Stories.procedure(), events.size()));
    }

    @Test
    void an_inspection_with_readings_is_begun_first() {
        assertThat(of(Stories.toInspect()).inspect()).get().isInstanceOf(NextAction.Begin.class);
        assertThat(of(Stories.toInspect()).entries()).extracting(Ask.Entry::label).containsExactly("length");
    }

    @Test
    void an_inspection_without_readings_is_stamped_at_once() {
        assertThat(of(Stories.troubled("touched")).inspect()).get().isInstanceOf(NextAction.AwaitStamp.class);
    }

    @Test
    void quarantine_asks_for_a_disposition_and_not_for_a_stamp() {
        Ask ask = of(Stories.rejected());
        assertThat(ask.inspect()).isEmpty();
        assertThat(ask.open()).hasSize(1);
    }

    @Test
    void what_is_finished_asks_for_nothing() {
        Ask ask = of(Stories.closed());
        assertThat(ask.inspect()).isEmpty();
        assertThat(ask.open()).isEmpty();
        assertThat(ask.entries()).isEmpty();
    }

    @Test
    void a_lead_may_choose_rework_and_scrap_an_inspector_all_four() {
        assertThat(Disposition.openTo(List.of(Role.LEAD))).containsExactly(Disposition.REWORK, Disposition.SCRAP);
        assertThat(Disposition.openTo(List.of(Role.INSPECTOR))).containsExactly(Disposition.values());
        assertThat(Disposition.openTo(List.of(Role.FABRICATOR))).isEmpty();
    }

    @Test
    void numbers_are_read_as_people_type_them() {
        assertThat(Ask.number(" 32,5 ")).isEqualByComparingTo("32.5");
        assertThat(Ask.number("−3")).isEqualByComparingTo("-3");
        assertThatThrownBy(() -> Ask.number("warm")).hasMessageContaining("a number");
    }
}
