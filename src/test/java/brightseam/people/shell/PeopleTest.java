package brightseam.people.shell;

import static brightseam.people.shell.Desk.ADA;
import static brightseam.people.shell.Desk.BO;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import brightseam.ledger.Entry;
import brightseam.people.Person;
import brightseam.people.PersonCommand.ChangeRoles;
import brightseam.people.PersonCommand.Deactivate;
import brightseam.people.PersonCommand.GrantQualification;
import brightseam.people.PersonCommand.IssueStamp;
import brightseam.people.PersonCommand.LoseStamp;
import brightseam.people.PersonCommand.Register;
import brightseam.people.PersonCommand.ReturnStamp;
import brightseam.people.PersonCommand.VoidStamp;
import brightseam.people.PersonCommand.WithdrawStamp;
import brightseam.people.PersonEvent;
import brightseam.people.PersonEvent.StampIssued;
import brightseam.people.Qualification;
import brightseam.people.Recognition.Recognised;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.people.Stamp;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PeopleTest {

    private static final BadgeId CY = new BadgeId("P-0003");

    private final Desk desk = new Desk().staffed(Role.INSPECTOR, Role.LEAD);

    @Test
    void rows_and_the_folded_ledger_say_the_same_of_a_person() {
        Instant until = Instant.parse("2032-01-01T00:00:00Z");
        desk.people.run(new IssueStamp(desk.by(ADA), BO, "BS-7"));
        desk.people.run(new GrantQualification(desk.by(ADA), BO, new Qualification("weld", until)));
        desk.people.run(new GrantQualification(desk.by(ADA), BO, new Qualification("weld", until.plusSeconds(9))));
        Optional<Person> found = desk.people.find(BO);
        assertThat(found).isEqualTo(desk.journal.load(BO).person());
        assertThat(found.orElseThrow().stamp()).contains("BS-7");
        assertThat(found.orElseThrow().qualifiedUntil("weld")).contains(until.plusSeconds(9));
        assertThat(desk.people.all()).extracting(Person::badge).containsExactly(ADA, BO);
    }

    @Test
    void rows_made_again_from_the_ledger_are_the_same() {
        desk.people.run(new IssueStamp(desk.by(ADA), BO, "BS-7"));
        desk.people.run(new Deactivate(desk.by(ADA), BO, "moved away"));
        List<Person> people = desk.people.all();
        List<Stamp> stamps = desk.people.stamps();
        desk.rows.tables().forEach(table -> desk.jdbc.sql("delete from " + table).update());
        assertThat(desk.people.all()).isEmpty();
        desk.ledger.readAllAfter(0, Integer.MAX_VALUE).forEach(desk.rows::apply);
        assertThat(desk.people.all()).isEqualTo(people);
        assertThat(desk.people.stamps()).isEqualTo(stamps);
    }

    @Test
    void a_stamp_number_is_never_used_again_after_it_was_withdrawn() {
        desk.people.run(new Register(desk.by(ADA), CY, "Cy Abara", List.of(Role.INSPECTOR)));
        desk.people.run(new IssueStamp(desk.by(ADA), BO, "BS-7"));
        desk.people.run(new WithdrawStamp(desk.by(ADA), BO, "lost"));
        assertThat(codes(desk.people.run(new IssueStamp(desk.by(ADA), CY, "BS-7")))).containsExactly("stamp-taken");
        assertThat(codes(desk.people.run(new IssueStamp(desk.by(ADA), BO, "BS-7")))).containsExactly("stamp-taken");
        assertThat(desk.people.stamps()).singleElement().satisfies(stamp -> {
            assertThat(stamp.holder()).isEqualTo(BO);
            assertThat(stamp.story()).extracting(Stamp::reason).containsExactly("", "lost");
        });
    }

    @Test
    void a_lost_stamp_signs_nothing_from_that_moment_and_its_story_stays() {
        desk.people.run(new IssueStamp(desk.by(ADA), BO, "BS-7"));
        assertThat(stampOfSignature()).contains("BS-7");
        desk.people.run(new LoseStamp(desk.by(BO), BO, "BS-7", "fell into the pit"));
        assertThat(stampOfSignature()).isEmpty();
        desk.people.run(new ReturnStamp(desk.by(ADA), BO, "BS-7", "found in the pit"));
        desk.people.run(new VoidStamp(desk.by(ADA), BO, "BS-7", "bent"));
        assertThat(stampOfSignature()).isEmpty();
        assertThat(desk.people.stamps()).singleElement().satisfies(stamp -> {
            assertThat(stamp.state()).isEqualTo(Stamp.State.VOIDED);
            assertThat(stamp.story()).extracting(Stamp::state).containsExactly(Stamp.State.HELD, Stamp.State.LOST,
                    Stamp.State.RETURNED, Stamp.State.VOIDED);
        });
        assertThat(codes(desk.people.run(new IssueStamp(desk.by(ADA), BO, "BS-7")))).containsExactly("stamp-taken");
    }

    @Test
    void what_becomes_of_an_old_stamp_leaves_the_new_one_in_its_holder_s_hands() {
        desk.people.run(new IssueStamp(desk.by(ADA), BO, "BS-7"));
        desk.people.run(new LoseStamp(desk.by(BO), BO, "BS-7", "fell into the pit"));
        desk.people.run(new IssueStamp(desk.by(ADA), BO, "BS-8"));
        desk.people.run(new ReturnStamp(desk.by(ADA), BO, "BS-7", "found in the pit"));
        assertThat(stampOfSignature()).contains("BS-8");
        assertThat(desk.people.find(BO)).isEqualTo(desk.journal.load(BO).person());
    }

    private Optional<String> stampOfSignature() {
        return desk.authenticator.signing("TAB-TEST", BO, Desk.PIN) instanceof Recognised(Signer signer)
                ? signer.stamp() : Optional.of("not recognised");
    }

    @Test
    void the_ledger_itself_refuses_a_number_twice_where_the_rows_were_read_too_early() {
        long version = desk.journal.load(BO).version();
        assertThat(desk.journal.store(BO, version, List.of(new StampIssued(desk.by(ADA), BO, "BS-7")))).isTrue();
        StampIssued again = new StampIssued(desk.by(ADA), ADA, "BS-7");
        assertThat(desk.journal.store(ADA, desk.journal.load(ADA).version(), List.of(again))).isFalse();
        assertThat(desk.people.find(ADA).orElseThrow().stamp()).isEmpty();
    }

    @Test
    void a_refused_command_leaves_no_entry() {
        List<String> before = desk.types(BO);
        assertThat(codes(desk.people.run(new ChangeRoles(desk.by(BO), BO, List.of(Role.ADMINISTRATOR)))))
                .containsExactly("not-administrator");
        assertThat(desk.types(BO)).isEqualTo(before);
    }

    @Test
    void no_pin_and_no_hash_is_in_the_ledger() {
        String hash = desk.pins.find(BO).orElseThrow().hash();
        desk.authenticator.signing("TAB-TEST", BO, "9746");
        assertThat(desk.ledger.readAllAfter(0, 1000)).hasSizeGreaterThan(4).extracting(Entry::json)
                .noneMatch(json -> json.contains(Desk.PIN) || json.contains("9746") || json.contains(hash));
    }

    @Test
    void a_pin_that_is_tried_first_is_not_set() {
        assertThat(codes(desk.people.setPin(desk.by(BO), BO, "1234"))).containsExactly("pin-trivial");
        assertThat(codes(desk.people.setPin(desk.by(BO), ADA, "7301"))).containsExactly("not-administrator");
        assertThat(desk.pins.matches(desk.pins.find(ADA), Desk.PIN)).isTrue();
    }

    private static List<String> codes(Decision<PersonEvent> decision) {
        return switch (decision) {
            case Decision.Accepted<PersonEvent> accepted -> throw new AssertionError(accepted.events());
            case Decision.Refused<PersonEvent> refused -> refused.refusals().stream().map(Refusal::code).toList();
        };
    }
}
