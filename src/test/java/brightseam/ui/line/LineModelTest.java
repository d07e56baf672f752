package brightseam.ui.line;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.line.Station;
import brightseam.procedure.shell.SharedTables;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.Card;
import brightseam.ui.bench.LedLot;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the line view says of tanks, and of what is between them. */
class LineModelTest {

    private final LedLot lot = new LedLot("T-1042");

    private List<PlaceRow> places(Moment now, Station... stations) {
        Card card = lot.card();
        return new LineModel(SharedTables.read(), List.of(card.procedure()))
                .places(List.of(stations), List.of(card), now);
    }

    private static Station station(String id, String stationClass, Optional<String> outOfUse) {
        return new Station(new StationId(id), stationClass, id + " title", false, outOfUse);
    }

    private static Station station(String id, String stationClass) {
        return station(id, stationClass, Optional.empty());
    }

    private void holding(String step) {
        lot.until(next -> next instanceof NextAction.Holding holding && holding.step().id().value().equals(step));
    }

    @Test
    void tanks_stand_in_the_order_of_the_route_and_benches_are_left_out() {
        holding("acid-pickle");
        assertThat(places(lot.now(), station("S-9", "dryer"), station("S-1", "pickle-tank"), station("S-5", "saw"),
                station("S-4", "rinse-tank"), station("S-3", "rinse-tank"), station("S-2", "degrease-tank")))
                .extracting(row -> row.station().value()).containsExactly("S-2", "S-3", "S-4", "S-1", "S-9");
    }

    @Test
    void what_is_inside_says_since_when_and_until_when_and_an_overrun_is_the_first_word() {
        holding("acid-pickle");
        PlaceRow held = places(lot.now(), station("S-1", "pickle-tank")).getFirst();
        assertThat(held.state()).isEqualTo("Held");
        assertThat(held.inside()).singleElement().satisfies(one -> {
            assertThat(one.travellers()).containsExactly(lot.card().id());
            assertThat(one.step()).isEqualTo("80 Acid pickle");
            assertThat(one.since()).isEqualTo(lot.now());
            assertThat(one.earliest()).contains(lot.now().plus(Duration.ofMinutes(1)));
            assertThat(one.latest()).contains(lot.now().plus(Duration.ofMinutes(5)));
        });
        assertThat(places(lot.now().plus(Duration.ofMinutes(2)), station("S-1", "pickle-tank")).getFirst().state())
                .isEqualTo("May come out");
        PlaceRow over = places(lot.now().plus(Duration.ofMinutes(6)), station("S-1", "pickle-tank")).getFirst();
        assertThat(over.state()).isEqualTo("OVERRUN");
        assertThat(over.alarms()).isTrue();
    }

    @Test
    void a_free_tank_says_free_and_one_out_of_use_says_why() {
        holding("acid-pickle");
        List<PlaceRow> rows = places(lot.now(), station("S-2", "rinse-tank"),
                station("S-3", "dryer", Optional.of("fan leaves dust")));
        assertThat(rows).extracting(PlaceRow::state).containsExactly("Free", "Out of use");
        assertThat(rows.getLast().outOfUse()).contains("fan leaves dust");
    }

    @Test
    void what_came_out_is_between_two_steps_until_the_next_one_has_begun() {
        holding("acid-pickle");
        lot.follow(lot.card().next());
        LineModel model = new LineModel(SharedTables.read(), List.of(lot.card().procedure()));
        assertThat(model.between(List.of(lot.card()))).singleElement().satisfies(row -> {
            assertThat(row.next()).isEqualTo("90 Rinse off the acid");
            assertThat(row.latest()).isEqualTo(lot.now().plus(Duration.ofSeconds(30)));
        });
        assertThat(places(lot.now(), station("S-1", "pickle-tank")).getFirst().state()).isEqualTo("Free");
        lot.follow(lot.card().next());
        assertThat(model.between(List.of(lot.card()))).isEmpty();
    }
}
