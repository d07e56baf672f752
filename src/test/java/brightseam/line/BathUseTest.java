package brightseam.line;

import static brightseam.line.Tank.CHEMIST;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BinId;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Room in the tank, and the use that brings the next analysis nearer. */
class BathUseTest {

    private static final Optional<BigDecimal> FIVE_SQUARE_METRES = Optional.of(new BigDecimal("5"));

    @Test
    void an_analysis_is_due_by_time_from_the_moment_the_good_sample_was_taken() {
        Tank tank = Tank.analysed().later(Duration.ofDays(7).toSeconds() - 1);
        assertThat(tank.objections()).isEmpty();
        assertThat(tank.later(1).objections()).containsExactly("bath-analysis-overdue");
        assertThat(tank.does(t -> t.analysis("A-2", "25", "1.8", "2")).objections()).isEmpty();
    }

    @Test
    void an_analysis_is_due_by_loads() {
        Tank tank = Tank.analysed().later(9).does(t -> t.load("B-1", "T-1")).does(t -> t.load("B-1", "T-2"))
                .does(t -> t.load("B-1", "T-3"));
        assertThat(tank.bath().loadsLeft()).contains(0);
        assertThat(tank.refusals(t -> t.load("B-1", "T-4"))).containsExactly("bath-loads-used-up");
    }

    @Test
    void an_analysis_is_due_by_area_and_the_estimate_of_titanium_grows_with_it() {
        Tank tank = Tank.analysed().later(9).does(t -> t.load("B-1", "T-1", FIVE_SQUARE_METRES, false))
                .does(t -> t.load("B-1", "T-2"));
        assertThat(tank.bath().areaLeftSquareMetres()).contains(new BigDecimal("7"));
        assertThat(tank.bath().loadsOfUnknownArea()).isEqualTo(1);
        // 2 g/L measured, and 5 m2 x 50 g/m2 into 400 L.
        assertThat(tank.bath().titaniumGramPerLitre()).isEqualByComparingTo("2.625");
        tank.does(t -> t.load("B-1", "T-3", Optional.of(new BigDecimal("7")), false));
        assertThat(tank.objections()).containsExactly("bath-loads-used-up", "bath-area-used-up");
    }

    @Test
    void a_measured_titanium_takes_the_place_of_the_estimate_except_for_loads_after_the_sample() {
        Tank tank = Tank.analysed().later(9).does(t -> t.load("B-1", "T-1", FIVE_SQUARE_METRES, false));
        var sampled = tank.later(9).now();
        tank.later(9).does(t -> t.load("B-1", "T-2", FIVE_SQUARE_METRES, false)).later(9)
                .does(t -> t.analysis("A-2", sampled, Tank.values("25", "1.8", "2.4"), CHEMIST));
        assertThat(tank.bath().titaniumGramPerLitre()).isEqualByComparingTo("3.025");
        assertThat(tank.does(Tank::makeUp).bath().titaniumGramPerLitre()).isEqualByComparingTo("0");
    }

    @Test
    void a_tank_takes_as_many_baskets_as_have_room_and_another_once_one_is_out() {
        Tank tank = Tank.analysed().later(9).does(t -> t.load("B-1", "T-1")).does(t -> t.load("B-2", "T-2", "B-1"));
        assertThat(tank.refusals(t -> t.load("B-3", "T-3", "B-1", "B-2"))).containsExactly("tank-occupied");
        tank.does(t -> t.load("B-3", "T-3", "B-2"));
        assertThat(tank.bath().inside()).extracting(LoadTaken::basket)
                .containsExactly(new BinId("B-2"), new BinId("B-3"));
    }

    @Test
    void more_travellers_of_a_basket_that_is_in_already_are_no_load_more() {
        Tank tank = Tank.analysed().later(9).does(t -> t.load("B-1", "T-1")).does(t -> t.load("B-1", "T-2", "B-1"));
        assertThat(tank.bath().loadsSinceGood()).isEqualTo(1);
        assertThat(tank.bath().inside()).singleElement()
                .satisfies(load -> assertThat(load.travellers()).isEqualTo(Tank.travellers("T-1", "T-2")));
        assertThat(tank.bath().suspects()).isEqualTo(Tank.travellers("T-1", "T-2"));
    }

    @Test
    void pieces_out_of_an_acid_are_taken_in_whatever_stands_against_it_and_it_is_written_down() {
        Tank tank = Tank.analysed().later(9).does(t -> t.load("B-1", "T-1")).does(t -> t.load("B-2", "T-2", "B-1"))
                .does(t -> t.lock(CHEMIST));
        List<BathEvent> events = tank.events(t -> t.load("B-3", "T-3", Optional.empty(), true, "B-1", "B-2"));
        assertThat(events).singleElement().satisfies(event -> assertThat(((BathEvent.TakenIn) event).despite())
                .containsExactly("bath-locked", "tank-occupied"));
    }
}
