package brightseam.tls;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class TermsTest {

    private static final Instant END = Instant.parse("2031-03-04T12:00:00Z");
    private static final HostNames INSIDE = HostNames.of(List.of("shop", "shop.local"), List.of("10.0.0.7"));

    @Test
    void a_certificate_is_due_a_month_before_its_end_and_not_before() {
        Instant due = END.minus(Duration.ofDays(30));
        assertThat(Terms.isDue(END, INSIDE, INSIDE, due.minusSeconds(1))).isFalse();
        assertThat(Terms.isDue(END, INSIDE, INSIDE, due)).isTrue();
    }

    @Test
    void a_certificate_is_due_when_the_machine_got_an_address_or_a_name_and_not_when_it_lost_one() {
        Instant now = END.minus(Duration.ofDays(200));
        HostNames moved = HostNames.of(List.of("shop"), List.of("10.0.0.8"));
        HostNames renamed = HostNames.of(List.of("bench"), List.of("10.0.0.7"));
        HostNames less = HostNames.of(List.of("shop"), List.of());
        assertThat(Terms.isDue(END, INSIDE, moved, now)).isTrue();
        assertThat(Terms.isDue(END, INSIDE, renamed, now)).isTrue();
        assertThat(Terms.isDue(END, INSIDE, less, now)).isFalse();
    }

    @Test
    void a_certificate_lasts_no_longer_than_browsers_take_it() {
        assertThat(Terms.SERVER_LIFE).isLessThan(Duration.ofDays(398));
    }

    @Test
    void what_is_no_host_name_is_left_out() {
        List<String> told = List.of("Shop-1.Local", "a_b", "-x", "10.0.0.1", "x".repeat(64), "");
        assertThat(HostNames.of(told, List.of()).names()).containsExactly("shop-1.local");
    }

    @Test
    void a_name_lies_under_its_domain_and_not_beside_it() {
        HostNames names = HostNames.of(List.of("a.local", "local", "alocal", "shop.example"), List.of("10.0.0.7"));
        assertThat(names.under(List.of("local")).names()).containsExactly("a.local", "local");
        assertThat(names.under(List.of()).addresses()).containsExactly("10.0.0.7");
    }
}
