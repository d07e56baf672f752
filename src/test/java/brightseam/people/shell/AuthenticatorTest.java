package brightseam.people.shell;

import static brightseam.people.shell.Desk.ADA;
import static brightseam.people.shell.Desk.BO;
import static brightseam.people.shell.Desk.PIN;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Refusal;
import brightseam.people.PersonCommand.Deactivate;
import brightseam.people.PersonCommand.UnlockPin;
import brightseam.people.PinRefusal.PinTooSoon;
import brightseam.people.Recognition;
import brightseam.people.Recognition.NotRecognised;
import brightseam.people.Recognition.Recognised;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AuthenticatorTest {

    private static final String TABLET = "TAB-TEST";
    private static final String WRONG = "7301";

    private final Desk desk = new Desk().staffed(Role.FABRICATOR);

    @Test
    void the_right_pin_gives_the_facts_of_the_signer() {
        assertThat(desk.authenticator.signing(TABLET, BO, PIN)).isEqualTo(new Recognised(new Signer(
                BO, "Bo Lindqvist", List.of(Role.FABRICATOR), Optional.empty(), "badge+pin")));
    }

    @Test
    void the_factors_say_that_the_signer_was_signed_in_on_the_tablet() {
        String label = desk.tablets.enrol("a token");
        desk.tablets.signIn(label, BO);
        assertThat(desk.authenticator.signing(label, BO, PIN)).isInstanceOfSatisfying(Recognised.class, recognised ->
                assertThat(recognised.signer().factors()).isEqualTo("signed-in+pin"));
    }

    @Test
    void an_unknown_badge_looks_like_a_wrong_pin_and_costs_the_same_comparison() {
        assertThat(codes(sign(new BadgeId("P-0999"), PIN))).isEqualTo(codes(sign(BO, WRONG)));
        assertThat(desk.types(new BadgeId("P-0999"))).isEmpty();
        assertThat(desk.pins.matches(Optional.empty(), "nobody")).isFalse();
    }

    @Test
    void every_wrong_pin_is_recorded_and_the_fifth_closes_the_badge_for_the_right_pin_too() {
        closeBadge();
        assertThat(desk.types(BO).stream().filter("pin-refused.1"::equals)).hasSize(5);
        assertThat(desk.types(BO)).endsWith("pin-refused.1", "pin-locked.1");
        desk.pass(Duration.ofDays(3));
        assertThat(codes(sign(BO, PIN))).containsExactly("pin-closed");
        assertThat(desk.people.find(BO).orElseThrow().pinLocked()).isTrue();
    }

    @Test
    void an_administrator_opens_the_badge_again() {
        closeBadge();
        desk.people.run(new UnlockPin(desk.by(ADA), BO));
        assertThat(sign(BO, PIN)).isInstanceOf(Recognised.class);
        assertThat(desk.people.find(BO).orElseThrow().pinLocked()).isFalse();
    }

    @Test
    void a_new_pin_does_not_open_a_closed_badge() {
        closeBadge();
        desk.people.setPin(desk.by(ADA), BO, "8642");
        assertThat(codes(sign(BO, "8642"))).containsExactly("pin-closed");
    }

    @Test
    void a_wall_clock_that_was_set_back_by_hours_makes_nobody_wait_for_hours() {
        IntStream.range(0, 3).forEach(i -> sign(BO, WRONG));
        desk.pass(Duration.ofHours(-5));
        assertThat(sign(BO, PIN)).isInstanceOf(Recognised.class);
        assertThat(sign(BO, WRONG)).isInstanceOf(NotRecognised.class);
    }

    @Test
    void a_wall_clock_that_was_set_forward_opens_no_badge_that_was_closed() {
        closeBadge();
        desk.pass(Duration.ofHours(5));
        assertThat(codes(sign(BO, PIN))).containsExactly("pin-closed");
    }

    @Test
    void after_three_wrong_pins_even_the_right_one_must_wait() {
        IntStream.range(0, 3).forEach(i -> sign(BO, WRONG));
        assertThat(sign(BO, PIN)).isEqualTo(new NotRecognised(new PinTooSoon(BO, 5)));
        desk.pass(Duration.ofSeconds(5));
        assertThat(sign(BO, PIN)).isInstanceOf(Recognised.class);
    }

    @Test
    void the_right_pin_clears_the_count() {
        IntStream.range(0, 12).forEach(i -> sign(BO, i % 3 == 2 ? PIN : WRONG));
        assertThat(sign(BO, PIN)).isInstanceOf(Recognised.class);
    }

    @Test
    void many_tries_at_once_are_not_many_free_tries() throws Exception {
        List<Callable<Recognition>> tries = IntStream.range(0, 40)
                .<Callable<Recognition>>mapToObj(i -> () -> sign(BO, WRONG))
                .toList();
        try (ExecutorService threads = Executors.newFixedThreadPool(8)) {
            threads.invokeAll(tries);
        }
        assertThat(desk.types(BO).stream().filter("pin-refused.1"::equals).count()).isLessThanOrEqualTo(5);
        assertThat(desk.pins.find(BO).orElseThrow().failures()).isBetween(3, 5);
    }

    @Test
    void one_place_that_tries_one_pin_on_every_badge_is_stopped() {
        for (int i = 0; i < Places.TRIES_MAX; i++) {
            assertThat(codes(sign(new BadgeId("P-1" + i), WRONG))).containsExactly("pin-wrong");
        }
        assertThat(codes(sign(BO, PIN))).containsExactly("place-too-often");
        assertThat(desk.authenticator.signing("TAB-OTHER", BO, PIN)).isInstanceOf(Recognised.class);
        desk.pass(Duration.ofMillis(Places.WINDOW_MILLIS));
        assertThat(sign(BO, PIN)).isInstanceOf(Recognised.class);
    }

    @Test
    void within_a_session_the_pin_alone_signs_and_after_idle_badge_and_pin_are_asked_for_again() {
        String label = desk.tablets.enrol("a token");
        desk.tablets.signIn(label, BO);
        assertThat(desk.authenticator.signing(label, BO, PIN)).isInstanceOf(Recognised.class);
        desk.pass(Duration.ofMinutes(15));
        assertThat(codes(desk.authenticator.signing(label, BO, PIN))).containsExactly("signed-out");
        desk.tablets.signIn(label, BO);
        assertThat(desk.authenticator.signing(label, BO, PIN)).isInstanceOf(Recognised.class);
    }

    @Test
    void after_hand_over_the_one_before_signs_nothing_on_that_tablet_with_the_pin_alone() {
        String label = desk.tablets.enrol("a token");
        desk.tablets.signIn(label, BO);
        desk.tablets.signOut(label);
        assertThat(codes(desk.authenticator.signing(label, BO, PIN))).containsExactly("signed-out");
        desk.tablets.signIn(label, ADA);
        assertThat(codes(desk.authenticator.signing(label, BO, PIN))).containsExactly("signed-out");
    }

    @Test
    void a_leaver_is_not_recognised() {
        desk.people.run(new Deactivate(desk.by(ADA), BO, "moved away"));
        assertThat(codes(sign(BO, PIN))).containsExactly("pin-wrong");
    }

    private void closeBadge() {
        for (int i = 0; i < 5; i++) {
            assertThat(codes(sign(BO, WRONG))).contains("pin-wrong");
            desk.pass(Duration.ofSeconds(20));
        }
    }

    private Recognition sign(BadgeId badge, String pin) {
        return desk.authenticator.signing(TABLET, badge, pin);
    }

    private static List<String> codes(Recognition recognition) {
        return switch (recognition) {
            case Recognised recognised -> throw new AssertionError(recognised);
            case NotRecognised refused -> refused.refusals().stream().map(Refusal::code).toList();
        };
    }
}
