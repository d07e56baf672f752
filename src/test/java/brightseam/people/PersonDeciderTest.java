package brightseam.people;

import static brightseam.people.Staff.ADA;
import static brightseam.people.Staff.BO;
import static brightseam.people.Staff.by;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.people.PersonCommand.ChangeRoles;
import brightseam.people.PersonCommand.Deactivate;
import brightseam.people.PersonCommand.IssueStamp;
import brightseam.people.PersonCommand.LoseStamp;
import brightseam.people.PersonCommand.Register;
import brightseam.people.PersonCommand.ReturnStamp;
import brightseam.people.PersonCommand.SetPin;
import brightseam.people.PersonCommand.UnlockPin;
import brightseam.people.PersonCommand.VoidStamp;
import brightseam.people.PersonCommand.WithdrawStamp;
import brightseam.people.PersonEvent.FirstPinSet;
import brightseam.people.PersonEvent.PersonDeactivated;
import brightseam.people.PersonEvent.PersonRegistered;
import brightseam.people.PersonEvent.PinSet;
import brightseam.people.PersonEvent.RolesChanged;
import brightseam.people.PersonEvent.StampIssued;
import brightseam.people.PersonEvent.StampLost;
import brightseam.people.PersonEvent.StampReturned;
import brightseam.people.PersonEvent.StampVoided;
import brightseam.people.PersonEvent.StampWithdrawn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PersonDeciderTest {

    private static final Person ADMINISTRATOR = Staff.person(ADA, Role.ADMINISTRATOR);
    private static final Person INSPECTOR = Staff.person(BO, Role.INSPECTOR);
    private static final Stamp HELD = Stamp.of(List.of(new StampIssued(by(ADA), BO, "BS-7")));
    private static final PersonFacts FACTS = new PersonFacts(Optional.of(ADMINISTRATOR), 1, Optional.empty());

    @Test
    void an_administrator_registers_a_person_with_roles_in_order() {
        Register register = new Register(by(ADA), BO, " Bo Lindqvist ", List.of(Role.LEAD, Role.FABRICATOR));
        assertThat(events(Optional.empty(), register, FACTS)).containsExactly(new PersonRegistered(
                by(ADA), BO, "Bo Lindqvist", List.of(Role.FABRICATOR, Role.LEAD)));
    }

    @Test
    void a_badge_is_never_given_twice_not_even_after_its_person_left() {
        Register register = new Register(by(ADA), BO, "Somebody else", List.of(Role.LEAD));
        assertThat(codes(Optional.of(Staff.left(INSPECTOR)), register, FACTS)).containsExactly("badge-taken");
    }

    @Test
    void nobody_else_than_an_active_administrator_asks() {
        PersonFacts byLead = new PersonFacts(Optional.of(Staff.person(ADA, Role.LEAD)), 1, Optional.empty());
        PersonFacts byNobody = new PersonFacts(Optional.empty(), 1, Optional.empty());
        PersonFacts byLeaver = new PersonFacts(Optional.of(Staff.left(ADMINISTRATOR)), 1, Optional.empty());
        UnlockPin unlock = new UnlockPin(by(ADA), BO);
        for (PersonFacts facts : List.of(byLead, byNobody, byLeaver)) {
            assertThat(codes(Optional.of(INSPECTOR), unlock, facts)).containsExactly("not-administrator");
        }
    }

    @Test
    void a_person_sets_their_own_pin_and_nobody_elses() {
        PersonFacts byInspector = new PersonFacts(Optional.of(INSPECTOR), 1, Optional.empty());
        assertThat(events(Optional.of(INSPECTOR), new SetPin(by(BO), BO), byInspector))
                .containsExactly(new PinSet(by(BO), BO));
        assertThat(codes(Optional.of(ADMINISTRATOR), new SetPin(by(BO), ADA), byInspector))
                .containsExactly("not-administrator");
    }

    @Test
    void a_pin_that_an_administrator_sets_for_somebody_is_a_first_pin() {
        assertThat(events(Optional.of(INSPECTOR), new SetPin(by(ADA), BO), FACTS))
                .containsExactly(new FirstPinSet(by(ADA), BO));
        assertThat(events(Optional.of(ADMINISTRATOR), new SetPin(by(ADA), ADA), FACTS))
                .containsExactly(new PinSet(by(ADA), ADA));
    }

    @Test
    void a_stamp_is_returned_lost_or_voided_with_a_reason_even_after_its_holder_left() {
        Person left = Staff.left(Staff.stamped(INSPECTOR, "BS-7"));
        assertThat(events(Optional.of(left), new ReturnStamp(by(ADA), BO, "BS-7", "on the last day"), about(HELD)))
                .containsExactly(new StampReturned(by(ADA), BO, "BS-7", "on the last day"));
        assertThat(events(Optional.of(left), new LoseStamp(by(ADA), BO, "BS-7", "not in the drawer"), about(HELD)))
                .containsExactly(new StampLost(by(ADA), BO, "BS-7", "not in the drawer"));
        assertThat(events(Optional.of(left), new VoidStamp(by(ADA), BO, "BS-7", "cut through"), about(HELD)))
                .containsExactly(new StampVoided(by(ADA), BO, "BS-7", "cut through"));
    }

    @Test
    void its_holder_may_say_that_a_stamp_is_lost_and_nothing_else_of_it() {
        PersonFacts byHolder = new PersonFacts(Optional.of(INSPECTOR), 1, Optional.empty(), Optional.of(HELD));
        assertThat(events(Optional.of(INSPECTOR), new LoseStamp(by(BO), BO, "BS-7", "fell into the pit"), byHolder))
                .hasSize(1);
        assertThat(codes(Optional.of(INSPECTOR), new VoidStamp(by(BO), BO, "BS-7", "worn"), byHolder))
                .containsExactly("not-administrator");
        assertThat(codes(Optional.of(ADMINISTRATOR), new LoseStamp(by(BO), ADA, "BS-7", "gone"), byHolder))
                .containsExactly("not-administrator", "stamp-unknown");
    }

    @Test
    void a_voided_stamp_stays_voided_and_a_lost_one_can_be_found() {
        Stamp voided = after(HELD, new StampVoided(by(ADA), BO, "BS-7", "worn"));
        Stamp lost = after(HELD, new StampLost(by(ADA), BO, "BS-7", "gone"));
        for (PersonCommand command : List.of(new ReturnStamp(by(ADA), BO, "BS-7", "found"),
                new LoseStamp(by(ADA), BO, "BS-7", "gone"), new VoidStamp(by(ADA), BO, "BS-7", "again"))) {
            assertThat(codes(Optional.of(INSPECTOR), command, about(voided))).containsExactly("stamp-state");
        }
        assertThat(codes(Optional.of(INSPECTOR), new VoidStamp(by(ADA), BO, "BS-7", "unseen"), about(lost)))
                .containsExactly("stamp-state");
        assertThat(events(Optional.of(INSPECTOR), new ReturnStamp(by(ADA), BO, "BS-7", "found"), about(lost)))
                .hasSize(1);
    }

    private static PersonFacts about(Stamp stamp) {
        return new PersonFacts(Optional.of(ADMINISTRATOR), 1, Optional.empty(), Optional.of(stamp));
    }

    private static Stamp after(Stamp stamp, PersonEvent.OfStamp event) {
        List<PersonEvent.OfStamp> story = new ArrayList<>(stamp.story());
        story.add(event);
        return Stamp.of(story);
    }

    @Test
    void a_stamp_number_that_anybody_ever_held_is_refused() {
        PersonFacts heldOnce = new PersonFacts(Optional.of(ADMINISTRATOR), 1, Optional.of(ADA));
        assertThat(codes(Optional.of(INSPECTOR), new IssueStamp(by(ADA), BO, "BS-7"), heldOnce))
                .containsExactly("stamp-taken");
    }

    @Test
    void a_second_stamp_and_a_stamp_for_a_fabricator_are_refused() {
        IssueStamp issue = new IssueStamp(by(ADA), BO, "BS-8");
        assertThat(codes(Optional.of(Staff.stamped(INSPECTOR, "BS-7")), issue, FACTS))
                .containsExactly("stamp-held");
        assertThat(codes(Optional.of(Staff.person(BO, Role.FABRICATOR)), issue, FACTS))
                .containsExactly("not-inspector");
        assertThat(codes(Optional.of(INSPECTOR), new WithdrawStamp(by(ADA), BO, "lost"), FACTS))
                .containsExactly("no-stamp-held");
    }

    @Test
    void a_leaver_and_a_former_inspector_hand_their_stamp_back() {
        Optional<Person> stamped = Optional.of(Staff.stamped(INSPECTOR, "BS-7"));
        assertThat(events(stamped, new Deactivate(by(ADA), BO, "retired"), FACTS)).containsExactly(
                new StampWithdrawn(by(ADA), BO, "BS-7", "retired"), new PersonDeactivated(by(ADA), BO, "retired"));
        assertThat(events(stamped, new ChangeRoles(by(ADA), BO, List.of(Role.LEAD)), FACTS)).containsExactly(
                new StampWithdrawn(by(ADA), BO, "BS-7", "no longer an inspector"),
                new RolesChanged(by(ADA), BO, List.of(Role.LEAD)));
    }

    @Test
    void the_last_administrator_stays() {
        PersonFacts alone = new PersonFacts(Optional.of(ADMINISTRATOR), 0, Optional.empty());
        assertThat(codes(Optional.of(ADMINISTRATOR), new Deactivate(by(ADA), ADA, "bored"), alone))
                .containsExactly("last-administrator");
        assertThat(codes(Optional.of(ADMINISTRATOR), new ChangeRoles(by(ADA), ADA, List.of()), alone))
                .containsExactly("no-role", "last-administrator");
    }

    @Test
    void the_servers_own_badge_and_unknown_badges_are_refused() {
        Register shop = new Register(by(ADA), Origin.SHOP, "Shop", List.of(Role.LEAD));
        assertThat(codes(Optional.empty(), shop, FACTS)).containsExactly("badge-reserved");
        assertThat(codes(Optional.empty(), new UnlockPin(by(ADA), new BadgeId("P-9")), FACTS))
                .containsExactly("badge-unknown");
    }

    private static List<PersonEvent> events(Optional<Person> person, PersonCommand command, PersonFacts facts) {
        return switch (PersonDecider.decide(person, command, facts)) {
            case Decision.Accepted<PersonEvent> accepted -> accepted.events();
            case Decision.Refused<PersonEvent> refused -> throw new AssertionError(refused.refusals());
        };
    }

    private static List<String> codes(Optional<Person> person, PersonCommand command, PersonFacts facts) {
        return switch (PersonDecider.decide(person, command, facts)) {
            case Decision.Accepted<PersonEvent> accepted -> throw new AssertionError(accepted.events());
            case Decision.Refused<PersonEvent> refused -> refused.refusals().stream().map(Refusal::code).toList();
        };
    }
}
