package brightseam.people.shell;

import static brightseam.people.shell.Desk.ADA;
import static brightseam.people.shell.Desk.BO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.BadgeId;
import brightseam.people.PersonCommand.Deactivate;
import brightseam.people.PersonCommand.GrantQualification;
import brightseam.people.Qualification;
import brightseam.people.Role;
import brightseam.people.SigningRefusal;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class SignedWorkTest {

    private static final Instant NOW = Instant.parse("2031-03-04T08:00:00Z");

    private final Desk desk = new Desk().staffed(Role.INSPECTOR);

    @Test
    void where_the_shop_asks_for_it_a_disposition_needs_a_qualification_that_has_not_run_out() {
        SignedWork work = new SignedWork(desk.people, " disposition, inspection");
        assertThat(work.objections(BO, SignedWork.DISPOSITION, NOW)).extracting(SigningRefusal::code)
                .containsExactly("not-qualified");
        desk.people.run(new GrantQualification(desk.by(ADA), BO, new Qualification("disposition", NOW.plusSeconds(9))));
        assertThat(work.objections(BO, SignedWork.DISPOSITION, NOW)).isEmpty();
        assertThat(work.objections(BO, SignedWork.DISPOSITION, NOW.plusSeconds(9))).extracting(SigningRefusal::code)
                .containsExactly("qualification-expired");
        assertThat(work.asked()).containsExactlyInAnyOrder("disposition", "inspection");
    }

    @Test
    void where_the_shop_asks_for_none_only_leavers_are_refused() {
        SignedWork work = new SignedWork(desk.people, "");
        for (String word : SignedWork.words()) {
            assertThat(work.objections(BO, word, NOW)).isEmpty();
        }
        desk.people.run(new Deactivate(desk.by(ADA), BO, "moved away"));
        assertThat(work.objections(BO, SignedWork.DISPOSITION, NOW)).extracting(SigningRefusal::code)
                .containsExactly("not-active");
        assertThat(work.objections(new BadgeId("P-0999"), SignedWork.DISPOSITION, NOW)).isEmpty();
    }

    @Test
    void a_word_that_is_no_word_stops_the_start() {
        assertThatThrownBy(() -> new SignedWork(desk.people, "Inspection!"))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("brightseam.qualified-for");
    }
}
