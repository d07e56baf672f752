package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** People and moments that the tests share. */
final class Staff {

    static final Instant NOON = Instant.parse("2031-03-04T12:00:00Z");
    static final BadgeId ADA = new BadgeId("P-0001");
    static final BadgeId BO = new BadgeId("P-0002");

    private Staff() {}

    static Origin by(BadgeId badge) {
        return new Origin(new Moment(NOON, 0), badge, "TAB-TEST", false);
    }

    static Person person(BadgeId badge, Role... roles) {
        return new Person(badge, "Somebody", List.of(roles), Optional.empty(), List.of(), true, true, false);
    }

    static Person stamped(Person person, String stamp) {
        return PersonFold.evolve(
                Optional.of(person), new PersonEvent.StampIssued(by(ADA), person.badge(), stamp));
    }

    static Person qualified(Person person, String word, Instant until) {
        return PersonFold.evolve(Optional.of(person), new PersonEvent.QualificationGranted(
                by(ADA), person.badge(), new Qualification(word, until)));
    }

    static Person left(Person person) {
        return PersonFold.evolve(
                Optional.of(person), new PersonEvent.PersonDeactivated(by(ADA), person.badge(), "moved away"));
    }
}
