package brightseam.people.shell;

import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.EventCodec;
import brightseam.kernel.BadgeId;
import brightseam.people.PersonEvent;
import java.util.Map;

/** The table of people's event names, and the names of their streams. */
final class PersonCodec {

    static final EventCodec<PersonEvent> EVENTS = new EventCodec<>(Map.ofEntries(
            Map.entry("person-registered.1", PersonEvent.PersonRegistered.class),
            Map.entry("roles-changed.1", PersonEvent.RolesChanged.class),
            Map.entry("stamp-issued.1", PersonEvent.StampIssued.class),
            Map.entry("stamp-withdrawn.1", PersonEvent.StampWithdrawn.class),
            Map.entry("stamp-returned.1", PersonEvent.StampReturned.class),
            Map.entry("stamp-lost.1", PersonEvent.StampLost.class),
            Map.entry("stamp-voided.1", PersonEvent.StampVoided.class),
            Map.entry("qualification-granted.1", PersonEvent.QualificationGranted.class),
            Map.entry("person-deactivated.1", PersonEvent.PersonDeactivated.class),
            Map.entry("pin-set.1", PersonEvent.PinSet.class),
            Map.entry("first-pin-set.1", PersonEvent.FirstPinSet.class),
            Map.entry("pin-refused.1", PersonEvent.PinRefused.class),
            Map.entry("pin-locked.1", PersonEvent.PinLocked.class),
            Map.entry("pin-unlocked.1", PersonEvent.PinUnlocked.class),
            Map.entry("signed-in.1", PersonEvent.SignedIn.class)));

    /** The family of one person's stream. */
    static final String PERSON = "person";
    /** The family of one stamp number's stream; its first version can be written once, so a number is issued once. */
    static final String STAMP = "stamp";

    private PersonCodec() {}

    static StreamName person(BadgeId badge) {
        return StreamName.of(PERSON, badge);
    }

    static StreamName stamp(String number) {
        return StreamName.of(STAMP, number);
    }

    static boolean isOfPerson(Entry entry) {
        return entry.stream().family().equals(PERSON) && EVENTS.knows(entry.type());
    }
}
