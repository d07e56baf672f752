package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.NotStoredException;
import brightseam.people.Person;
import brightseam.people.PersonEvent;
import brightseam.people.PersonEvent.PinLocked;
import brightseam.people.PersonEvent.PinRefused;
import brightseam.people.PinLife;
import brightseam.people.PinRefusal.PinClosed;
import brightseam.people.PinRefusal.PinExpired;
import brightseam.people.PinRefusal.PinIsFirst;
import brightseam.people.PinRefusal.PinTooSoon;
import brightseam.people.PinRefusal.PinWrong;
import brightseam.people.PinRefusal.PlaceTooOften;
import brightseam.people.PinRefusal.SignedOut;
import brightseam.people.PinRules;
import brightseam.people.Recognition;
import brightseam.people.Recognition.NotRecognised;
import brightseam.people.Recognition.Recognised;
import brightseam.people.Signer;
import brightseam.people.shell.Pins.Kept;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.TransactionException;

/** Recognises people by badge and PIN, and is patient with slips but not with guessing. */
@Service
public class Authenticator {

    private static final Logger LOG = LoggerFactory.getLogger(Authenticator.class);

    /** The factors of whoever gave badge and PIN. */
    static final String BADGE_AND_PIN = "badge+pin";
    /** The factors of whoever is signed in on the tablet, by badge and PIN, and gave the PIN again. */
    static final String SIGNED_IN_AND_PIN = "signed-in+pin";

    private static final int CLAIMS_MAX = 3;
    private static final long PAUSE_MILLIS_MAX = PinRules.pauseSeconds(PinRules.FAILURES_MAX) * 1000L;

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
     * for {@link brightseam.people.SigningRules}. On a tablet that people sign in on, the badge has to be signed in:
     * after it lay idle or was handed over, badge and PIN are asked for again.
     *
     * @return refused with {@code signed-out}, {@code pin-wrong}, {@code pin-closed}, {@code pin-too-soon}, {@code
     *     place-too-often}, {@code pin-first} or {@code pin-expired}
     */
    public Recognition signing(String tablet, BadgeId badge, String pin) {
        Optional<Tablet> known = tablets.find(tablet);
        boolean signedInHere = known.flatMap(tablets::present).filter(badge::equals).isPresent();
        if (known.isPresent() && !signedInHere) {
            return new NotRecognised(new SignedOut(badge));
        }
        return usable(recognise(
                tablet, tablet, badge, pin, "signature", signedInHere ? SIGNED_IN_AND_PIN : BADGE_AND_PIN));
    }

    /**
     * Who signs beside the person who is signed in on {@code tablet}, by badge and PIN both, once: nobody is signed in
     * by it. Refused as {@link #signing}, without {@code signed-out}.
     */
    public Recognition signingBeside(String tablet, BadgeId badge, String pin) {
        return usable(recognise(tablet, tablet, badge, pin, "signature", BADGE_AND_PIN));
    }

    /** Who signs in; refused as {@link #signing}, tries counted by {@code place}, such as an address. */
    Recognition signingIn(String place, String tablet, BadgeId badge, String pin) {
        return usable(recognise(place, tablet, badge, pin, "sign-in", BADGE_AND_PIN));
    }

    /** Whose PIN {@code pin} is, to choose another one: good for that though it is a first one or has expired. */
    Recognition choosingPin(String place, String tablet, BadgeId badge, String pin) {
        return recognise(place, tablet, badge, pin, "new PIN", BADGE_AND_PIN);
    }

    private Recognition usable(Recognition recognition) {
        return recognition instanceof Recognised(Signer signer)
                ? pins.find(signer.badge()).map(kept -> pins.standing(kept, clock.now().wall()))
                        .flatMap(standing -> refusal(signer.badge(), standing))
                        .<Recognition>map(NotRecognised::new).orElse(recognition)
                : recognition;
    }

    private static Optional<Refusal> refusal(BadgeId badge, PinLife.Standing standing) {
        return switch (standing) {
            case GOOD, ENDS_SOON -> Optional.empty();
            case EXPIRED -> Optional.of(new PinExpired(badge));
            case FIRST -> Optional.of(new PinIsFirst(badge));
        };
    }

    /** Where the database does not take the count of tries, nobody is recognised, and nothing was stored. */
    private Recognition recognise(
            String place, String tablet, BadgeId badge, String pin, String purpose, String factors) {
        try {
            return counted(place, tablet, badge, pin, purpose, factors);
        } catch (DataAccessException | TransactionException failure) {
            LOG.error("the database does not answer", failure);
            throw new NotStoredException("the database does not answer");
        }
    }

    private Recognition counted(
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
            pins.right(badge, kept.orElseThrow(), pin, clock.now().wall());
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
                return kept.map(k -> k.until(time.millis() + 1000));
            }
            kept = pins.find(badge);
        }
        return kept;
    }

    private boolean mayTry(Kept kept) {
        return !kept.isClosed() && waitMillis(kept) <= 0;
    }

    /** A wait longer than any pause comes from a wall clock that was set back meanwhile: nobody waits for hours. */
    private long waitMillis(Kept kept) {
        long wait = kept.nextTryMillis() - time.millis();
        return wait > PAUSE_MILLIS_MAX ? 0 : wait;
    }

    private Optional<Recognition> unchecked(Person person, Kept kept, String tablet) {
        if (kept.isClosed()) {
            if (!person.pinLocked()) {
                journal.note(new PinLocked(noticed(tablet), person.badge(), kept.failures()));
            }
            return Optional.of(new NotRecognised(new PinClosed(person.badge())));
        }
        long waitMillis = waitMillis(kept);
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
