package brightseam.people.shell;

import static brightseam.people.shell.Desk.ADA;
import static brightseam.people.shell.Desk.BO;
import static brightseam.people.shell.Desk.PIN;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import brightseam.people.PersonEvent;
import brightseam.people.PinLife.Standing;
import brightseam.people.Recognition;
import brightseam.people.Recognition.NotRecognised;
import brightseam.people.Recognition.Recognised;
import brightseam.people.Role;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;

class PinChangeTest {

    private static final String FIRST = "8642";
    private static final String OWN = "739102";

    private final Desk desk = new Desk().staffed(Role.FABRICATOR);

    @Test
    void an_administrator_who_sets_a_pin_cannot_sign_with_it() {
        desk.people.setPin(desk.by(ADA), BO, FIRST);
        assertThat(codes(sign(FIRST))).containsExactly("pin-first");
        assertThat(codes(desk.authenticator.signingIn("address", "TAB-TEST", BO, FIRST))).containsExactly("pin-first");
        assertThat(desk.types(BO)).endsWith("first-pin-set.1");
    }

    @Test
    void with_a_first_pin_its_owner_chooses_another_one_and_signs_with_that() {
        desk.people.setPin(desk.by(ADA), BO, FIRST);
        assertThat(codes(change(FIRST, FIRST))).containsExactly("pin-used-before");
        assertThat(change(FIRST, OWN)).isInstanceOf(Decision.Accepted.class);
        assertThat(sign(OWN)).isInstanceOf(Recognised.class);
        assertThat(codes(sign(FIRST))).containsExactly("pin-wrong");
        assertThat(desk.types(BO)).contains("first-pin-set.1").endsWith("pin-set.1", "pin-refused.1");
    }

    @Test
    void an_expired_pin_signs_nothing_and_serves_for_choosing_the_next_one() {
        desk.clock.passDays(364);
        assertThat(desk.people.pinStanding(BO)).contains(Standing.ENDS_SOON);
        assertThat(sign(PIN)).isInstanceOf(Recognised.class);
        desk.clock.passDays(1);
        assertThat(codes(sign(PIN))).containsExactly("pin-expired");
        assertThat(change(PIN, OWN)).isInstanceOf(Decision.Accepted.class);
        assertThat(sign(OWN)).isInstanceOf(Recognised.class);
        assertThat(desk.people.pinStanding(BO)).contains(Standing.GOOD);
    }

    @Test
    void a_wrong_pin_changes_nothing_and_counts_as_a_wrong_pin() {
        assertThat(codes(change("7301", OWN))).containsExactly("pin-wrong");
        assertThat(desk.types(BO)).endsWith("pin-refused.1");
        assertThat(sign(PIN)).isInstanceOf(Recognised.class);
    }

    @Test
    void none_of_the_last_five_pins_is_taken_again_and_the_sixth_is() {
        List<String> pins = List.of(PIN, "739102", "739103", "739104", "739105");
        for (int i = 1; i < pins.size(); i++) {
            desk.clock.passDays(1);
            assertThat(change(pins.get(i - 1), pins.get(i))).isInstanceOf(Decision.Accepted.class);
        }
        pins.forEach(pin -> assertThat(codes(change(pins.getLast(), pin))).containsExactly("pin-used-before"));
        desk.clock.passDays(1);
        assertThat(change(pins.getLast(), "739106")).isInstanceOf(Decision.Accepted.class);
        assertThat(change("739106", PIN)).isInstanceOf(Decision.Accepted.class);
    }

    @Test
    void a_pin_of_the_first_form_is_hashed_anew_when_it_is_used_and_its_age_begins() {
        String first = new BCryptPasswordEncoder(4).encode(PIN);
        desk.jdbc.sql("update person_pin set pin_hash = ?, set_millis = 0 where badge = ?")
                .params(first, BO.value()).update();
        desk.clock.passDays(3_000);
        assertThat(sign(PIN)).isInstanceOf(Recognised.class);
        assertThat(desk.pins.find(BO).orElseThrow().hash()).startsWith("{bcrypt+");
        assertThat(sign(PIN)).isInstanceOf(Recognised.class);
        desk.clock.passDays(365);
        assertThat(codes(sign(PIN))).containsExactly("pin-expired");
    }

    @Test
    void a_closed_badge_is_not_opened_by_choosing_another_pin() {
        for (int i = 0; i < 5; i++) {
            sign("7301");
            desk.pass(java.time.Duration.ofSeconds(20));
        }
        assertThat(codes(change(PIN, OWN))).containsExactly("pin-closed");
    }

    @Test
    void nobody_s_old_pins_outlive_them() {
        change(PIN, OWN);
        desk.people.run(new brightseam.people.PersonCommand.Deactivate(desk.by(ADA), BO, "moved away"));
        assertThat(desk.jdbc.sql("select count(*) from person_pin_before where badge = ?").params(BO.value())
                .query(Integer.class).single()).isZero();
    }

    private Decision<PersonEvent> change(String old, String fresh) {
        return desk.pinChange.change("address", "TAB-TEST", BO, old, fresh);
    }

    private Recognition sign(String pin) {
        return desk.authenticator.signing("TAB-TEST", BO, pin);
    }

    private static List<String> codes(Recognition recognition) {
        return recognition instanceof NotRecognised not
                ? not.refusals().stream().map(Refusal::code).toList() : List.of("recognised");
    }

    private static List<String> codes(Decision<PersonEvent> decision) {
        return decision instanceof Decision.Refused<PersonEvent> refused
                ? refused.refusals().stream().map(Refusal::code).toList() : List.of("accepted");
    }
}
