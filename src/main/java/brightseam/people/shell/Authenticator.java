package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
import brightseam.people.Person;
import brightseam.people.PersonEvent;
import brightseam.people.PersonEvent.PinLocked;
import brightseam.people.PersonEvent.PinRefused;
import brightseam.people.PinRefusal.PinClosed;
import brightseam.people.PinRefusal.PinTooSoon;
import brightseam.people.PinRefusal.PinWrong;
import brightseam.people.PinRefusal.PlaceTooOften;
import brightseam.people.PinRules;
import brightseam.people.Recognition;
import brightseam.people.Recognition.NotRecognised;
import brightseam.people.Recognition.Recognised;
import brightseam.people.Signer;
import brightseam.people.shell.Pins.Kept;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** Recognises people by badge and PIN, and is patient with slips but not with guessing. */
@Service
public class Authenticator {

    /** The factors of whoever gave badge and PIN. */
    static final String BADGE_AND_PIN = "badge+pin";
    /** The factors of whoever is signed in on the tablet, by badge and PIN, and gave the PIN again. */
    static final String SIGNED_IN_AND_PIN = "signed-in+pin";

    private static final int CLAIMS_MAX = 3;

    private final PersonReader people;
    private final PersonJournal journal;
    private final Pins pins;
    private final Places places;
    private final Tablets tablets;
    private final RealTime time;
    private final ShopClock clock;

    Authenticator(PersonReader people, PersonJournal journal, Pins pins, Places places, Tablets tablets,
            RealTime time, ShopClock clock) {
        this.people = people;
        this.journal = journal;
        this.pins = pins;
        this.places = places;
        this.tablets = tablets;
        this.time = time;
        this.clock = clock;
    }

    /**
     * Who signs on {@code tablet}: the PIN is asked for at every signature. Whether that person may sign the step is
     * for {@link brightseam.people.SigningRules}.
     *
     * @return refused with {@code pin-wrong}, {@code pin-closed}, {@code pin-too-soon} or {@code place-too-often}
     */
    public Recognition signing(String tablet, BadgeId badge, String pin) {
        boolean signedInHere = tablets.find(tablet)
                .flatMap(tablets::present)
                .filter(badge::equals)
                .isPresent();
        return recognise(tablet, tablet, badge, pin, "signature", signedInHere ? SIGNED_IN_AND_PIN : BADGE_AND_PIN);
    }

    /**
     * Checks a PIN for something other than signing in or a signature, such as changing it.
     *
     * @param purpose a few words for the record of a refused try
     */
    public Recognition check(String tablet, BadgeId badge, String pin, String purpose) {
        return recognise(tablet, tablet, badge, pin, purpose, BADGE_AND_PIN);
    }

    /** As {@link #check}, but counts tries by {@code place}, such as an address. */
    Recognition recognise(
            String place, String tablet, BadgeId badge, String pin, String purpose, String factors) {
        long waitSeconds = places.claimTry(place);
        if (waitSeconds > 0) {
            return new NotRecognised(new PlaceTooOften(waitSeconds));
        }
        Optional<Person> person = people.find(badge).filter(Person::active);
        Optional<Kept> kept = claim(badge);
        if (person.isPresent() && kept.isPresent()) {
            Optional<Recognition> unchecked = unchecked(person.get(), kept.get(), tablet);
            if (unchecked.isPresent()) {
                return unchecked.get();
            }
        }
        if (pins.matches(kept, pin) && person.isPresent()) {
            pins.forgive(badge);
            places.forgive(place);
            return new Recognised(Signer.of(person.get(), factors));
        }
        return wrong(person, kept, tablet, badge, purpose);
    }

    /** The PIN as kept before this try, with the try counted where it is one; too early and closed are not. */
    private Optional<Kept> claim(BadgeId badge) {
        Optional<Kept> kept = pins.find(badge);
        for (int claims = 1; kept.isPresent() && mayTry(kept.get()); claims++) {
            if (pins.claimTry(badge, kept.get())) {
                return kept;
            }
            if (claims == CLAIMS_MAX) {
                return kept.map(k -> new Kept(k.hash(), k.failures(), time.millis() + 1000));
            }
            kept = pins.find(badge);
        }
        return kept;
    }

    private boolean mayTry(Kept kept) {
        return !kept.isClosed() && kept.nextTryMillis() <= time.millis();
    }

    private Optional<Recognition> unchecked(Person person, Kept kept, String tablet) {
        if (kept.isClosed()) {
            if (!person.pinLocked()) {
                journal.note(new PinLocked(noticed(tablet), person.badge(), kept.failures()));
            }
            return Optional.of(new NotRecognised(new PinClosed(person.badge())));
        }
        long waitMillis = kept.nextTryMillis() - time.millis();
        return waitMillis > 0
                ? Optional.of(new NotRecognised(new PinTooSoon(person.badge(), Math.ceilDiv(waitMillis, 1000L))))
                : Optional.empty();
    }

    private Recognition wrong(
            Optional<Person> person, Optional<Kept> kept, String tablet, BadgeId badge, String purpose) {
        if (person.isEmpty() || kept.isEmpty()) {
            return new NotRecognised(new PinWrong(badge));
        }
        int failures = kept.get().failures() + 1;
        PersonEvent refused = new PinRefused(noticed(tablet), badge, purpose, failures);
        if (failures < PinRules.FAILURES_MAX) {
            journal.note(refused);
            return new NotRecognised(new PinWrong(badge));
        }
        journal.note(refused, new PinLocked(noticed(tablet), badge, failures));
        return new NotRecognised(List.of(new PinWrong(badge), new PinClosed(badge)));
    }

    private Origin noticed(String tablet) {
        return new Origin(clock.now(), Origin.SHOP, tablet, clock.isDemo());
    }
}
