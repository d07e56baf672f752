package brightseam.people.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.people.PersonCommand.ChangeRoles;
import brightseam.people.Role;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TabletsTest {

    private final Desk desk = new Desk().staffed(Role.FABRICATOR);
    private final String token = TabletToken.random();
    private final String label = desk.tablets.enrol(token);

    @Test
    void only_the_hash_of_the_token_is_stored() {
        List<String> stored = desk.jdbc.sql("select token_hash from tablet").query(String.class).list();
        assertThat(stored).containsExactly(TabletToken.hash(token)).doesNotContain(token);
        assertThat(TabletToken.hash("abc"))
                .as("SHA-256 of abc, FIPS 180-2 appendix B.1")
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(java.util.Base64.getUrlDecoder().decode(token)).hasSize(32);
    }

    @Test
    void a_tablet_is_known_by_its_token_and_by_no_other() {
        assertThat(desk.tablets.byToken(token).orElseThrow().label()).isEqualTo(label).matches("TAB-[A-Z2-9]{4}");
        assertThat(desk.tablets.byToken(TabletToken.random())).isEmpty();
        assertThat(desk.tablets.byToken(TabletToken.hash(token))).isEmpty();
    }

    @Test
    void a_person_is_present_until_the_tablet_was_idle_for_the_set_time() {
        desk.tablets.signIn(label, Desk.BO);
        desk.pass(Duration.ofMinutes(14));
        assertThat(present()).contains(Desk.BO);
        desk.tablets.touch(tablet());
        desk.pass(Duration.ofMinutes(15).minusMillis(1));
        assertThat(present()).contains(Desk.BO);
        desk.pass(Duration.ofMillis(1));
        assertThat(present()).isEmpty();
    }

    @Test
    void the_open_card_outlives_sign_out_and_the_next_person() {
        desk.tablets.signIn(label, Desk.BO);
        desk.tablets.openCard(label, "T-1042");
        desk.tablets.signOut(label);
        desk.tablets.signIn(label, Desk.ADA);
        assertThat(tablet().openCard()).contains("T-1042");
        assertThat(tablet().badge()).contains(Desk.ADA);
    }

    @Test
    void changed_roles_sign_a_person_out_everywhere() {
        desk.tablets.signIn(label, Desk.BO);
        desk.people.run(new ChangeRoles(desk.by(Desk.ADA), Desk.BO, List.of(Role.LEAD)));
        assertThat(present()).isEmpty();
    }

    private Optional<brightseam.kernel.BadgeId> present() {
        return desk.tablets.present(tablet());
    }

    private Tablet tablet() {
        return desk.tablets.find(label).orElseThrow();
    }
}
