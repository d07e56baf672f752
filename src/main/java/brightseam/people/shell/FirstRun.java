package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Decision.Accepted;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Append;
import brightseam.ledger.StreamName;
import brightseam.people.PersonCommand.Register;
import brightseam.people.PersonDecider;
import brightseam.people.PersonEvent;
import brightseam.people.PersonEvent.PinSet;
import brightseam.people.PersonFacts;
import brightseam.people.PersonRefusal.ShopAlreadyOpen;
import brightseam.people.PinRefusal;
import brightseam.people.PinRules;
import brightseam.people.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** The first page of an empty shop: makes the first administrator, once. */
@Service
public class FirstRun {

    /** Its first version can be written once; whoever writes it opens the shop. */
    private static final StreamName OPENING = new StreamName("shop/OPENING");

    private final PersonReader people;
    private final PersonJournal journal;
    private final Pins pins;
    private final ShopClock clock;

    FirstRun(PersonReader people, PersonJournal journal, Pins pins, ShopClock clock) {
        this.people = people;
        this.journal = journal;
        this.pins = pins;
        this.clock = clock;
    }

    /** Whether nobody has a badge yet, so that the first-run page is to be shown. */
    public boolean isNeeded() {
        return people.nobody();
    }

    /**
     * Makes the first administrator, or is refused with {@code shop-already-open} where there is anybody already;
     * of two at the same time one wins.
     *
     * @throws IllegalArgumentException where the name has a wrong form
     */
    public synchronized Decision<PersonEvent> open(BadgeId badge, String name, String pin) {
        if (!isNeeded()) {
            return Decision.refused(List.of(new ShopAlreadyOpen()));
        }
        List<PinRefusal> weak = PinRules.broken(badge, pin);
        if (!weak.isEmpty()) {
            return Decision.refused(weak);
        }
        Origin origin = new Origin(clock.now(), Origin.SHOP, "server", clock.isDemo());
        Decision<PersonEvent> decision = PersonDecider.decide(
                Optional.empty(),
                new Register(origin, badge, name, List.of(Role.ADMINISTRATOR)),
                new PersonFacts(Optional.empty(), 0, Optional.empty()));
        return decision instanceof Accepted<PersonEvent>(List<PersonEvent> events)
                ? store(origin, badge, pin, events)
                : decision;
    }

    /** The PIN first: an administrator without one could not sign in, and nobody could make another. */
    private Decision<PersonEvent> store(Origin origin, BadgeId badge, String pin, List<PersonEvent> registered) {
        List<PersonEvent> events = new ArrayList<>(registered);
        events.add(new PinSet(origin, badge));
        pins.replace(badge, pins.hash(pin), origin.at().wall(), false);
        boolean stored = false;
        try {
            stored = journal.store(badge, 0, events,
                    new Append(OPENING, 0, List.of(PersonCodec.EVENTS.write(registered.getFirst()))));
        } finally {
            if (!stored && people.find(badge).isEmpty()) {
                pins.remove(badge);
            }
        }
        return stored ? Decision.accepted(events) : Decision.refused(List.of(new ShopAlreadyOpen()));
    }
}
