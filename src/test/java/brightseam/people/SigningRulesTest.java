package brightseam.people;

import static brightseam.people.Staff.BO;
import static brightseam.people.Staff.NOON;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.people.SigningRefusal.NotActive;
import brightseam.people.SigningRefusal.NotQualified;
import brightseam.people.SigningRefusal.QualificationExpired;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SigningRulesTest {

    private static final Set<String> PICKLE = Set.of("pickle-tank", "soak");

    @Test
    void an_active_fabricator_signs_a_fabricators_step() {
        assertThat(broken(Staff.person(BO, Role.FABRICATOR), Set.of())).isEmpty();
    }

    @Test
    void every_broken_rule_is_named_and_not_only_the_first() {
        Person left = Staff.left(Staff.person(BO, Role.FABRICATOR));
        assertThat(broken(left, Set.of("pickle-tank"))).containsExactly(
                new NotActive(BO), new NotQualified(BO, "pickle-tank"));
    }

    @Test
    void a_qualification_is_asked_for_only_where_the_shop_says_so() {
        Person fabricator = Staff.person(BO, Role.FABRICATOR);
        assertThat(broken(fabricator, Set.of("weld"))).isEmpty();
        assertThat(broken(fabricator, Set.of("weld", "soak")))
                .containsExactly(new NotQualified(BO, "soak"));
    }

    @Test
    void a_qualification_ends_at_its_very_instant() {
        Person lastMoment =
                Staff.qualified(Staff.person(BO, Role.FABRICATOR), "pickle-tank", NOON.plusNanos(1));
        Person tooLate = Staff.qualified(Staff.person(BO, Role.FABRICATOR), "pickle-tank", NOON);
        assertThat(broken(lastMoment, PICKLE)).containsExactly(new NotQualified(BO, "soak"));
        assertThat(broken(tooLate, Set.of("pickle-tank")))
                .containsExactly(new QualificationExpired(BO, "pickle-tank", NOON));
    }

    @Test
    void a_qualification_granted_again_replaces_the_expired_one() {
        Person again = Staff.qualified(
                Staff.qualified(Staff.person(BO, Role.FABRICATOR), "soak", NOON.minusSeconds(1)),
                "soak", NOON.plusSeconds(1));
        assertThat(broken(again, Set.of("soak"))).isEmpty();
    }

    @Test
    void a_last_day_lasts_to_its_midnight_in_the_shops_zone() {
        Qualification qualification =
                Qualification.throughDay("soak", LocalDate.of(2031, 3, 4), ZoneId.of("Pacific/Auckland"));
        assertThat(qualification.until()).isEqualTo("2031-03-04T11:00:00Z");
    }

    private static Iterable<SigningRefusal> broken(Person person, Set<String> needed) {
        return SigningRules.broken(new SigningRequest(person, PICKLE, needed, NOON));
    }
}
