package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Decision.Accepted;
import brightseam.kernel.Decision.Refused;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
import brightseam.people.Person;
import brightseam.people.PersonCommand;
import brightseam.people.PersonCommand.ChangeRoles;
import brightseam.people.PersonCommand.Deactivate;
import brightseam.people.PersonCommand.IssueStamp;
import brightseam.people.PersonCommand.SetPin;
import brightseam.people.PersonCommand.UnlockPin;
import brightseam.people.PersonDecider;
import brightseam.people.PersonEvent;
import brightseam.people.PersonFacts;
import brightseam.people.PinLife;
import brightseam.people.PinRefusal;
import brightseam.people.PinRefusal.PinUsedBefore;
import brightseam.people.PinRules;
import brightseam.people.Role;
import brightseam.people.Stamp;
import brightseam.people.shell.PersonJournal.Folded;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** The people of the shop: who they are, what they may do, their stamps and PINs. */
@Service
public class People {

    private static final int TRIES_MAX = 10;

    private final PersonReader people;
    private final PersonJournal journal;
    private final Pins pins;
    private final Tablets tablets;
    private final ShopClock clock;

    People(PersonReader people, PersonJournal journal, Pins pins, Tablets tablets, ShopClock clock) {
        this.people = people;
        this.journal = journal;
        this.pins = pins;
        this.tablets = tablets;
        this.clock = clock;
    }

    /** The person with this badge, active or not. */
    public Optional<Person> find(BadgeId badge) {
        return people.find(badge);
    }

    /** Everybody who ever had a badge, by badge. */
    public List<Person> all() {
        return people.all();
    }

    /** The stamp register: every stamp ever issued with its story, by number. */
    public List<Stamp> stamps() {
        return people.stampNumbers().stream().map(journal::stamp).flatMap(Optional::stream).toList();
    }

    /** What the PIN of {@code badge} is good for now; empty where none is set. */
    public Optional<PinLife.Standing> pinStanding(BadgeId badge) {
        return pins.find(badge).map(kept -> pins.standing(kept, clock.now().wall()));
    }

    /** When the PIN of {@code badge} ends; empty where none is set or PINs do not end. */
    public Optional<Instant> pinEnds(BadgeId badge) {
        return pins.find(badge).flatMap(pins::endOf);
    }

    /**
     * Does what {@code command} asks for, or answers every rule that it breaks. A PIN is set with {@link #setPin} only.
     *
     * @throws IllegalArgumentException where a name, reason or stamp number has a wrong form
     * @throws brightseam.ledger.NotStoredException where the ledger could not store it; then nothing happened
     */
    public Decision<PersonEvent> run(PersonCommand command) {
        if (command instanceof SetPin) {
            throw new IllegalArgumentException("a PIN is set with setPin");
        }
        Decision<PersonEvent> decision = decideAndStore(command);
        if (decision instanceof Accepted<PersonEvent>) {
            afterwards(command);
        }
        return decision;
    }

    /**
     * Sets the PIN of {@code badge}: one's own, through {@link PinChange}; or as an administrator a first one, which
     * is good for nothing but choosing another. A closed badge stays closed until it is unlocked.
     *
     * @return refused with {@code pin-form}, {@code pin-trivial} or, for one's own, {@code pin-used-before} besides
     *     the rules for people
     */
    public Decision<PersonEvent> setPin(Origin origin, BadgeId badge, String pin) {
        List<PinRefusal> weak = new ArrayList<>(PinRules.broken(badge, pin));
        if (origin.by().equals(badge) && weak.isEmpty() && pins.wasUsed(badge, pin)) {
            weak.add(new PinUsedBefore(PinLife.LAST_ONES));
        }
        if (!weak.isEmpty()) {
            return Decision.refused(weak);
        }
        String hash = pins.hash(pin);
        Decision<PersonEvent> decision = decideAndStore(new SetPin(origin, badge));
        if (decision instanceof Accepted<PersonEvent>(List<PersonEvent> events)) {
            boolean first = events.stream().anyMatch(PersonEvent.FirstPinSet.class::isInstance);
            pins.replace(badge, hash, origin.at().wall(), first);
        }
        return decision;
    }

    private synchronized Decision<PersonEvent> decideAndStore(PersonCommand command) {
        for (int tries = 1; tries <= TRIES_MAX; tries++) {
            Folded folded = journal.load(command.badge());
            Decision<PersonEvent> decision = PersonDecider.decide(folded.person(), command, facts(command));
            switch (decision) {
                case Refused<PersonEvent> refused -> {
                    return refused;
                }
                case Accepted<PersonEvent> accepted -> {
                    if (journal.store(command.badge(), folded.version(), accepted.events())) {
                        return accepted;
                    }
                }
            }
        }
        throw new IllegalStateException("somebody else was first " + TRIES_MAX + " times: " + command.badge());
    }

    private void afterwards(PersonCommand command) {
        switch (command) {
            case Deactivate deactivate -> {
                pins.remove(deactivate.badge());
                tablets.signOutEverywhere(deactivate.badge());
            }
            case ChangeRoles change -> tablets.signOutEverywhere(change.badge());
            case UnlockPin unlock -> pins.forgive(unlock.badge());
            case PersonCommand.Register register -> { }
            case IssueStamp issue -> { }
            case PersonCommand.WithdrawStamp withdraw -> { }
            case PersonCommand.ReturnStamp back -> { }
            case PersonCommand.LoseStamp lost -> { }
            case PersonCommand.VoidStamp gone -> { }
            case PersonCommand.GrantQualification grant -> { }
            case SetPin set -> throw new IllegalArgumentException("handled by setPin: " + set.badge());
        }
    }

    private PersonFacts facts(PersonCommand command) {
        int others = (int) people.all().stream()
                .filter(person -> person.active() && person.holds(Role.ADMINISTRATOR))
                .filter(person -> !person.badge().equals(command.badge()))
                .count();
        Optional<BadgeId> holder =
                command instanceof IssueStamp issue ? people.stampEverHeldBy(issue.stamp()) : Optional.empty();
        return new PersonFacts(people.find(command.origin().by()), others, holder,
                stampNamedBy(command).flatMap(journal::stamp));
    }

    private static Optional<String> stampNamedBy(PersonCommand command) {
        return switch (command) {
            case PersonCommand.ReturnStamp back -> Optional.of(back.stamp());
            case PersonCommand.LoseStamp lost -> Optional.of(lost.stamp());
            case PersonCommand.VoidStamp gone -> Optional.of(gone.stamp());
            case PersonCommand other -> Optional.empty();
        };
    }
}
