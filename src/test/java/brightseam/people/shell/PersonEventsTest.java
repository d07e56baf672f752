package brightseam.people.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.people.PersonEvent;
import brightseam.people.PersonEvent.OfStamp;
import brightseam.people.Qualification;
import brightseam.people.Role;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.api.Test;

/** The written form of every event, kept for ever beside this test. A line is never edited. */
class PersonEventsTest {

    private static final Path APPROVED = Path.of("src/test/resources/approved/person-events.txt");
    private static final Origin ORIGIN = new Origin(
            new Moment(Instant.parse("2031-10-14T06:10:09Z"), 86_400_000L), new BadgeId("P-0001"), "TAB-K7Q2", true);
    private static final BadgeId BADGE = new BadgeId("P-0104");

    private static List<PersonEvent> samples() {
        return List.of(
                new PersonEvent.PersonRegistered(ORIGIN, BADGE, "Bo Lindqvist", List.of(Role.FABRICATOR, Role.LEAD)),
                new PersonEvent.RolesChanged(ORIGIN, BADGE, List.of(Role.INSPECTOR)),
                new PersonEvent.StampIssued(ORIGIN, BADGE, "BS-07"),
                new PersonEvent.StampWithdrawn(ORIGIN, BADGE, "BS-07", "no longer an inspector"),
                new PersonEvent.StampReturned(ORIGIN, BADGE, "BS-07", "on the last day"),
                new PersonEvent.StampLost(ORIGIN, BADGE, "BS-07", "fell into the pit"),
                new PersonEvent.StampVoided(ORIGIN, BADGE, "BS-07", "cut through"),
                new PersonEvent.QualificationGranted(ORIGIN, BADGE,
                        new Qualification("pickle-tank", Instant.parse("2032-10-15T00:00:00Z"))),
                new PersonEvent.PersonDeactivated(ORIGIN, BADGE, "moved away"),
                new PersonEvent.PinSet(ORIGIN, BADGE),
                new PersonEvent.FirstPinSet(ORIGIN, BADGE),
                new PersonEvent.PinRefused(ORIGIN, BADGE, "signature", 2),
                new PersonEvent.PinLocked(ORIGIN, BADGE, 5),
                new PersonEvent.PinUnlocked(ORIGIN, BADGE),
                new PersonEvent.SignedIn(ORIGIN, BADGE));
    }

    @Test
    void every_event_has_a_sample() {
        Set<Class<?>> all = Stream.concat(Stream.of(PersonEvent.class.getPermittedSubclasses()),
                Stream.of(OfStamp.class.getPermittedSubclasses()))
                .filter(type -> !type.isInterface()).collect(Collectors.toSet());
        assertThat(samples()).extracting(Object::getClass).containsExactlyInAnyOrderElementsOf(all);
    }

    @Test
    void events_are_written_as_approved_and_read_back_as_the_same() throws IOException {
        List<String> written = samples().stream().map(PersonEventsTest::line).toList();
        if (Boolean.getBoolean("approve")) {
            Files.write(APPROVED, written);
        }
        assertThat(written).isEqualTo(Files.readAllLines(APPROVED));
        assertThat(Files.readAllLines(APPROVED).stream().map(PersonEventsTest::event).toList()).isEqualTo(samples());
    }

    private static String line(PersonEvent event) {
        NewEvent written = PersonCodec.EVENTS.write(event);
        try {
            return written.type() + " " + new JsonCanonicalizer(written.json()).getEncodedString();
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static PersonEvent event(String line) {
        String[] parts = line.split(" ", 2);
        return PersonCodec.EVENTS.read(new Entry(1, new StreamName("person/P-0104"), 1, parts[0], parts[1], "", ""));
    }
}
