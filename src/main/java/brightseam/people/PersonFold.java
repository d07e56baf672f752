package brightseam.people;

import brightseam.people.PersonEvent.FirstPinSet;
import brightseam.people.PersonEvent.OfStamp;
import brightseam.people.PersonEvent.PersonDeactivated;
import brightseam.people.PersonEvent.PersonRegistered;
import brightseam.people.PersonEvent.PinLocked;
import brightseam.people.PersonEvent.PinRefused;
import brightseam.people.PersonEvent.PinSet;
import brightseam.people.PersonEvent.PinUnlocked;
import brightseam.people.PersonEvent.QualificationGranted;
import brightseam.people.PersonEvent.RolesChanged;
import brightseam.people.PersonEvent.SignedIn;
import brightseam.people.PersonEvent.StampIssued;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Folds events into a person. */
public final class PersonFold {

    private PersonFold() {}

    /** The person after {@code events}; empty where there are none. */
    public static Optional<Person> fold(List<PersonEvent> events) {
        Optional<Person> person = Optional.empty();
        for (PersonEvent event : events) {
            person = Optional.of(evolve(person, event));
        }
        return person;
    }

    /**
     * The person after {@code event}.
     *
     * @throws IllegalStateException where a person's first event is not the registration
     */
    public static Person evolve(Optional<Person> before, PersonEvent event) {
        if (event instanceof PersonRegistered registered) {
            return new Person(registered.badge(), registered.name(), registered.roles(),
                    Optional.empty(), List.of(), true, false, false);
        }
        Person person = before.orElseThrow(() -> new IllegalStateException("not registered: " + event.badge()));
        return switch (event) {
            case PersonRegistered again -> throw new IllegalStateException("handled above: " + again);
            case RolesChanged change -> with(person, change.roles(), person.stamp());
            case StampIssued issued -> with(person, person.roles(), Optional.of(issued.stamp()));
            case OfStamp ended -> with(person, person.roles(),
                    person.stamp().filter(held -> !held.equals(ended.stamp())));
            case QualificationGranted granted -> qualified(person, granted.qualification());
            case PersonDeactivated left -> flags(person, false, person.pinSet(), person.pinLocked());
            case PinSet set -> flags(person, person.active(), true, person.pinLocked());
            case FirstPinSet set -> flags(person, person.active(), true, person.pinLocked());
            case PinLocked locked -> flags(person, person.active(), person.pinSet(), true);
            case PinUnlocked unlocked -> flags(person, person.active(), person.pinSet(), false);
            case PinRefused refused -> person;
            case SignedIn signedIn -> person;
        };
    }

    private static Person with(Person person, List<Role> roles, Optional<String> stamp) {
        return new Person(person.badge(), person.name(), roles, stamp, person.qualifications(),
                person.active(), person.pinSet(), person.pinLocked());
    }

    private static Person flags(Person person, boolean active, boolean pinSet, boolean pinLocked) {
        return new Person(person.badge(), person.name(), person.roles(), person.stamp(), person.qualifications(),
                active, pinSet, pinLocked);
    }

    private static Person qualified(Person person, Qualification qualification) {
        List<Qualification> all = new ArrayList<>(person.qualifications());
        all.removeIf(earlier -> earlier.word().equals(qualification.word()));
        all.add(qualification);
        return new Person(person.badge(), person.name(), person.roles(), person.stamp(), all,
                person.active(), person.pinSet(), person.pinLocked());
    }
}
