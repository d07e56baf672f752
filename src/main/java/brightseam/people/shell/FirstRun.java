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
import brightseam.people.PersonRefusal.OpeningCodeWrong;
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
    private final OpeningCode code;
    private final Places places;
    private final ShopClock clock;

    FirstRun(PersonReader people, PersonJournal journal, Pins pins, OpeningCode code, Places places,
            ShopClock clock) {
        this.people = people;
        this.journal = journal;
        this.pins = pins;
        this.code = code;
        this.places = places;
        this.clock = clock;
    }

    /** Whether nobody has a badge yet, so that the first-run page is to be shown. */
    public boolean isNeeded() {
        return people.nobody();
    }

    /** What the server prints on its console; {@link #open} asks for it. */
    public String code() {
        return code.readable();
    }

    /**
     * Makes the first administrator, or is refused with {@code shop-already-open} where there is anybody already;
     * of two at the same time one wins.
     *
     * @param place where the try comes from, such as an address; too many of one place have to wait
     * @param given the code of the console; else refused with {@code opening-code-wrong}
     * @throws IllegalArgumentException where the name has a wrong form
     */
    public synchronized Decision<PersonEvent> open(
            String place, String given, BadgeId badge, String name, String pin) {
        if (!isNeeded()) {
            return Decision.refused(List.of(new ShopAlreadyOpen()));
        }
        long waitSeconds = places.claimTry("first run " + place);
        if (waitSeconds > 0) {
            return Decision.refused(List.of(new PinRefusal.PlaceTooOften(waitSeconds)));
        }
        if (!code.is(given)) {
            return Decision.refused(List.of(new OpeningCodeWrong()));
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
