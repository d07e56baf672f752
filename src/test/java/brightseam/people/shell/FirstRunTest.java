package brightseam.people.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import brightseam.people.Person;
import brightseam.people.PersonEvent;
import brightseam.people.Recognition.Recognised;
import brightseam.people.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

class FirstRunTest {

    private final Desk desk = new Desk();

    @Test
    void an_empty_shop_gets_its_first_administrator_who_can_sign_at_once() {
        FirstRun firstRun = desk.firstRun();
        assertThat(firstRun.isNeeded()).isTrue();
        firstRun.open("here", firstRun.code(), Desk.ADA, "Ada Moreau", Desk.PIN);
        assertThat(firstRun.isNeeded()).isFalse();
        assertThat(desk.people.find(Desk.ADA).orElseThrow().roles()).containsExactly(Role.ADMINISTRATOR);
        assertThat(desk.authenticator.signing("TAB-TEST", Desk.ADA, Desk.PIN)).isInstanceOf(Recognised.class);
    }

    @Test
    void a_weak_pin_leaves_the_shop_closed() {
        assertThat(codes(desk.firstRun().open("here", desk.code.readable(), Desk.ADA, "Ada Moreau", "1111")))
                .containsExactly("pin-trivial");
        assertThat(desk.firstRun().isNeeded()).isTrue();
    }

    @Test
    void only_who_can_read_the_console_opens_the_shop() {
        FirstRun firstRun = desk.firstRun();
        assertThat(codes(firstRun.open("here", "", Desk.ADA, "Ada Moreau", Desk.PIN)))
                .containsExactly("opening-code-wrong");
        assertThat(codes(firstRun.open("here", new OpeningCode().readable(), Desk.ADA, "Ada Moreau", Desk.PIN)))
                .containsExactly("opening-code-wrong");
        assertThat(firstRun.isNeeded()).isTrue();
        String written = firstRun.code().toLowerCase(Locale.ROOT).replace("-", " ");
        assertThat(firstRun.open("here", written, Desk.ADA, "Ada Moreau", Desk.PIN))
                .isInstanceOf(Decision.Accepted.class);
    }

    @Test
    void whoever_guesses_the_code_has_to_wait_and_nobody_else() {
        FirstRun firstRun = desk.firstRun();
        for (int tries = 0; tries < Places.TRIES_MAX; tries++) {
            firstRun.open("there", "AAAA-AAAA", Desk.ADA, "Mallory", Desk.PIN);
        }
        assertThat(codes(firstRun.open("there", firstRun.code(), Desk.ADA, "Mallory", Desk.PIN)))
                .containsExactly("place-too-often");
        assertThat(firstRun.open("here", firstRun.code(), Desk.ADA, "Ada Moreau", Desk.PIN))
                .isInstanceOf(Decision.Accepted.class);
    }

    @Test
    void a_shop_with_people_is_not_opened_again() {
        desk.staffed(Role.LEAD);
        assertThat(codes(desk.firstRun().open("here", desk.code.readable(), new BadgeId("P-0666"), "Mallory", "8642")))
                .containsExactly("shop-already-open");
    }

    @Test
    void of_two_at_the_same_time_exactly_one_wins_and_the_other_leaves_nothing_behind() throws Exception {
        for (int round = 0; round < 10; round++) {
            Desk fresh = new Desk();
            CyclicBarrier start = new CyclicBarrier(2);
            List<Callable<Decision<PersonEvent>>> rivals = new ArrayList<>();
            for (BadgeId badge : List.of(Desk.ADA, Desk.BO)) {
                FirstRun ofItsOwn = fresh.firstRun();
                rivals.add(() -> {
                    start.await();
                    return ofItsOwn.open("here", fresh.code.readable(), badge, "Rival " + badge, Desk.PIN);
                });
            }
            List<Decision<PersonEvent>> answers = new ArrayList<>();
            try (ExecutorService threads = Executors.newFixedThreadPool(2)) {
                for (Future<Decision<PersonEvent>> answer : threads.invokeAll(rivals)) {
                    answers.add(answer.get());
                }
            }
            assertThat(answers.stream().filter(Decision.Accepted.class::isInstance)).hasSize(1);
            List<Person> people = fresh.people.all();
            assertThat(people).hasSize(1);
            assertThat(fresh.jdbc.sql("select badge from person_pin").query(String.class).list())
                    .containsExactly(people.getFirst().badge().value());
        }
    }

    private static List<String> codes(Decision<PersonEvent> decision) {
        return switch (decision) {
            case Decision.Accepted<PersonEvent> accepted -> throw new AssertionError(accepted.events());
            case Decision.Refused<PersonEvent> refused -> refused.refusals().stream().map(Refusal::code).toList();
        };
    }
}
