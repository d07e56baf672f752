package brightseam.line;

import static brightseam.line.BathLock.Cause.BY_HAND;
import static brightseam.line.BathLock.Cause.FOUND_BAD;
import static brightseam.line.BathLock.Cause.OUT_OF_LIMITS;
import static brightseam.line.Tank.CHEMIST;
import static brightseam.line.Tank.FABRICATOR;
import static brightseam.line.Tank.LEAD;
import static brightseam.line.Tank.travellers;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.Limits;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class BathDeciderTest {

    @Test
    void a_bath_is_registered_once_and_by_process_control() {
        assertThat(new Tank().refusals(tank -> tank.register(LEAD))).containsExactly("bath-role-missing");
        assertThat(new Tank().refusals(Tank::makeUp)).containsExactly("bath-unknown");
        assertThat(Tank.registered().refusals(tank -> tank.register(CHEMIST)))
                .containsExactly("bath-already-registered");
    }

    @Test
    void a_fill_that_was_never_analysed_takes_nothing_in() {
        assertThat(Tank.registered().refusals(tank -> tank.load("B-1", "T-1"))).containsExactly("bath-never-analysed");
        assertThat(Tank.analysed().objections()).isEmpty();
        assertThat(Tank.analysed().does(Tank::makeUp).objections()).containsExactly("bath-never-analysed");
    }

    @Test
    void the_ratio_is_made_from_the_acids_and_held_to_its_limit() {
        assertThat(Tank.analysed().bath().lastGood().orElseThrow().values())
                .containsEntry(BathQuantity.ACID_RATIO, new BigDecimal("13.89"));
        Tank thin = Tank.registered().does(tank -> tank.analysis("A-1", "20", "2", "0"));
        assertThat(thin.objections()).isEmpty();
        assertThat(thin.later(9).does(tank -> tank.analysis("A-2", "20", "2.1", "0")).objections())
                .containsExactly("bath-above-limit", "bath-below-limit");
        assertThatThrownBy(() -> Tank.registered().analysis("A-1", thin.now(), new TreeMap<>(Map.of(
                BathQuantity.ACID_RATIO, BigDecimal.TEN)), CHEMIST)).hasMessageContaining("acid ratio");
    }

    @Test
    void an_analysis_is_whole_in_order_of_time_and_numbered_once() {
        Tank tank = Tank.analysed().later(100);
        assertThat(tank.refusals(t -> t.analysis("A-1", "25", "1.8", "2"))).containsExactly("sample-number-taken");
        var values = Tank.values("25", "1.8", "2");
        assertThat(tank.refusals(t -> t.analysis("A-2", t.now().plus(Duration.ofSeconds(-101)), values, CHEMIST)))
                .containsExactly("sample-out-of-order");
        assertThat(tank.refusals(t -> t.analysis("A-2", t.now().plus(Duration.ofSeconds(1)), values, CHEMIST)))
                .containsExactly("sample-in-the-future");
        values.remove(BathQuantity.HYDROFLUORIC_ACID);
        assertThat(tank.refusals(t -> t.analysis("A-2", t.now(), values, FABRICATOR)))
                .containsExactly("bath-role-missing", "analysis-incomplete");
    }

    @Test
    void an_analysis_out_of_limits_locks_by_itself_and_names_everything_since_the_last_good_one() {
        Tank tank = Tank.analysed().later(60).does(t -> t.load("B-1", "T-1")).later(60).does(t -> t.load("B-2", "T-2"));
        List<BathEvent> events = tank.later(60).events(t -> t.analysis("A-2", "18", "1.8", "2"));
        assertThat(events).hasExactlyElementsOfTypes(
                BathEvent.Analysed.class, BathEvent.Locked.class, BathEvent.SuspectsNamed.class);
        assertThat(((BathEvent.SuspectsNamed) events.get(2)).travellers()).isEqualTo(travellers("T-1", "T-2"));
        tank.does(t -> t.analysis("A-2", "18", "1.8", "2"));
        assertThat(tank.objections()).containsExactly("bath-below-limit");
        assertThat(tank.bath().suspects()).isEmpty();
        assertThat(tank.refusals(t -> t.unlock(OUT_OF_LIMITS, CHEMIST))).containsExactly("good-analysis-missing");
    }

    @Test
    void a_good_analysis_lifts_what_an_analysis_locked() {
        Tank tank = Tank.analysed().does(t -> t.analysis("A-2", "18", "1.8", "2")).later(60)
                .does(t -> t.addition(Addend.NITRIC_ACID)).later(600);
        assertThat(tank.objections()).containsExactly("bath-below-limit", "bath-strengthened");
        assertThat(tank.does(t -> t.analysis("A-3", "25", "1.8", "2")).objections()).isEmpty();
        assertThat(tank.bath().locks()).isEmpty();
    }

    @Test
    void limits_that_were_widened_do_not_lift_the_lock_of_an_analysis() {
        Tank tank = Tank.analysed().does(t -> t.analysis("A-2", "18", "1.8", "2")).does(t ->
                new BathCommand.ChangeTerms(Tank.ID, new BathTerms(new TreeMap<>(Map.of(BathQuantity.NITRIC_ACID,
                        new Limits(Optional.of(BigDecimal.TEN), Optional.empty()))), AnalysisDue.never(),
                        Optional.empty()), "drawing change", t.at(), CHEMIST));
        assertThat(tank.objections()).containsExactly("bath-locked-by-analysis");
    }

    @Test
    void limits_that_were_narrowed_count_for_the_last_analysis_at_once() {
        Tank tank = Tank.analysed().does(t ->
                new BathCommand.ChangeTerms(Tank.ID, new BathTerms(new TreeMap<>(Map.of(BathQuantity.NITRIC_ACID,
                        new Limits(Optional.of(new BigDecimal("26")), Optional.empty()))), AnalysisDue.never(),
                        Optional.empty()), "haze on the last parts", t.at(), CHEMIST));
        assertThat(tank.objections()).containsExactly("bath-below-limit");
    }

    @Test
    void a_load_after_the_sample_stays_unproven_by_the_good_analysis() {
        Tank tank = Tank.analysed().later(60).does(t -> t.load("B-1", "T-1"));
        var sampled = tank.later(60).now();
        tank.later(60).does(t -> t.load("B-2", "T-2")).later(600)
                .does(t -> t.analysis("A-2", sampled, Tank.values("25", "1.8", "3"), CHEMIST));
        assertThat(tank.bath().suspects()).isEqualTo(travellers("T-2"));
        assertThat(tank.bath().loadsSinceGood()).isEqualTo(1);
    }

    @Test
    void a_bath_found_bad_names_its_loads_across_a_new_fill_and_needs_a_good_sample_and_a_signature() {
        Tank tank = Tank.analysed().later(60).does(t -> t.load("B-1", "T-1")).does(Tank::makeUp).later(60);
        assertThat(tank.refusals(t -> t.findBad(FABRICATOR))).containsExactly("bath-role-missing");
        assertThat(BathVerdict.of(tank.bath(), tank.events(t -> t.findBad(LEAD))).suspects())
                .isEqualTo(travellers("T-1"));
        tank.does(t -> t.findBad(LEAD));
        assertThat(tank.refusals(t -> t.unlock(FOUND_BAD, CHEMIST))).containsExactly("good-analysis-missing");
        tank.later(60).does(t -> t.analysis("A-2", "25", "1.8", "0"));
        assertThat(tank.objections()).containsExactly("bath-locked");
        assertThat(tank.refusals(t -> t.unlock(FOUND_BAD, LEAD))).containsExactly("bath-role-missing");
        assertThat(tank.does(t -> t.unlock(FOUND_BAD, CHEMIST)).objections()).isEmpty();
    }

    @Test
    void what_was_locked_by_hand_is_unlocked_by_hand() {
        Tank tank = Tank.analysed().does(t -> t.lock(LEAD));
        assertThat(tank.refusals(t -> t.load("B-1", "T-1"))).containsExactly("bath-locked");
        assertThat(tank.refusals(t -> t.lock(CHEMIST))).containsExactly("bath-locked");
        assertThat(tank.does(t -> t.unlock(BY_HAND, LEAD)).objections()).isEmpty();
        assertThat(tank.refusals(t -> t.unlock(BY_HAND, LEAD))).containsExactly("bath-not-locked");
    }

    @Test
    void water_for_what_went_off_needs_no_analysis() {
        assertThat(Tank.analysed().does(t -> t.addition(Addend.WATER)).objections()).isEmpty();
    }
}
