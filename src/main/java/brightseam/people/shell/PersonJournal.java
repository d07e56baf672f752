package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.NewEvent;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.Ledger;
import brightseam.people.Person;
import brightseam.people.PersonEvent;
import brightseam.people.PersonEvent.OfStamp;
import brightseam.people.PersonFold;
import brightseam.people.Stamp;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.springframework.stereotype.Component;

/** Brings people's events into the ledger and back. */
@Component
class PersonJournal {

    private static final int TRIES_MAX = 10;

    private final Ledger ledger;

    PersonJournal(Ledger ledger) {
        this.ledger = ledger;
    }

    /** A person and the version that they were folded at. */
    record Folded(Optional<Person> person, long version) {}

    Folded load(BadgeId badge) {
        List<PersonEvent> events = ledger.read(PersonCodec.person(badge)).stream()
                .map(PersonCodec.EVENTS::read)
                .toList();
        return new Folded(PersonFold.fold(events), events.size());
    }

    /** Everything that happened to the stamp {@code number}; empty where it was never issued. */
    Optional<Stamp> stamp(String number) {
        List<OfStamp> story = ledger.read(PersonCodec.stamp(number)).stream()
                .map(PersonCodec.EVENTS::read)
                .map(OfStamp.class::cast)
                .toList();
        return story.isEmpty() ? Optional.empty() : Optional.of(Stamp.of(story));
    }

    /** Stores {@code events} if the person's stream still is at {@code version}; false where somebody was first. */
    boolean store(BadgeId badge, long version, List<? extends PersonEvent> events, Append... more) {
        List<Append> appends = new ArrayList<>(List.of(more));
        appends.add(new Append(PersonCodec.person(badge), version,
                events.stream().map(PersonCodec.EVENTS::write).toList()));
        appends.addAll(stampEntries(events));
        return switch (ledger.append(appends)) {
            case Appended.Stored stored -> true;
            case Appended.Conflict conflict -> false;
            case Appended.NotStored failure -> throw new NotStoredException(failure.reason());
        };
    }

    /** Stores something that merely happened: nothing to decide, so whoever was first, it goes behind. */
    void note(PersonEvent... events) {
        BadgeId badge = events[0].badge();
        for (int tries = 1; tries <= TRIES_MAX; tries++) {
            if (store(badge, ledger.version(PersonCodec.person(badge)), List.of(events))) {
                return;
            }
        }
        throw new IllegalStateException("somebody else was first " + TRIES_MAX + " times: " + badge);
    }

    private List<Append> stampEntries(List<? extends PersonEvent> events) {
        Map<StreamName, List<NewEvent>> entries = new TreeMap<>();
        for (PersonEvent event : events) {
            if (event instanceof OfStamp happened) {
                entries.computeIfAbsent(PersonCodec.stamp(happened.stamp()), stream -> new ArrayList<>())
                        .add(PersonCodec.EVENTS.write(event));
            }
        }
        return entries.entrySet().stream()
                .map(entry -> new Append(entry.getKey(), startsAt(entry), entry.getValue()))
                .toList();
    }

    private long startsAt(Map.Entry<StreamName, List<NewEvent>> entry) {
        boolean issue = entry.getValue().getFirst().type().equals("stamp-issued.1");
        return issue ? 0 : ledger.version(entry.getKey());
    }
}
