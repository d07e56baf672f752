package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.OwnerAlone;
import brightseam.kernel.shell.ShopClock;
import brightseam.people.Person;
import brightseam.people.PersonEvent.FirstPinSet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.stereotype.Component;

/**
 * Gives the badge named by {@code brightseam.first-pin-for} a first PIN at the start, in a file beside the pepper that
 * this user alone reads: the way back in when the only administrator's PIN is gone. The record says that it was the
 * server's doing, and the PIN is good for nothing but choosing another one.
 */
@Component
class FirstPinAtStart implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(FirstPinAtStart.class);
    private static final int PIN_MIN = 100_000;
    private static final int PIN_END = 1_000_000;

    private final PersonReader people;
    private final PersonJournal journal;
    private final Pins pins;
    private final ShopClock clock;
    private final Path keys;
    private final String badge;

    FirstPinAtStart(PersonReader people, PersonJournal journal, Pins pins, ShopClock clock,
            @Value("${brightseam.keys:${brightseam.data:./data}/keys}") Path keys,
            @Value("${brightseam.first-pin-for:}") String badge) {
        this.people = people;
        this.journal = journal;
        this.pins = pins;
        this.clock = clock;
        this.keys = keys;
        this.badge = badge;
    }

    @Override
    public void run(ApplicationArguments arguments) throws IOException {
        if (badge.isBlank()) {
            return;
        }
        BadgeId owner = new BadgeId(badge);
        if (people.find(owner).filter(Person::active).isEmpty()) {
            LOG.error("nobody who works here has badge {}: no PIN was set", owner);
            return;
        }
        String pin = String.valueOf(new SecureRandom().nextInt(PIN_MIN, PIN_END));
        Path file = keys.resolve("first-pin-" + owner);
        Files.deleteIfExists(file);
        Files.createFile(file, OwnerAlone.file(keys));
        Files.writeString(file, pin + "\n", StandardCharsets.US_ASCII);
        Origin origin = new Origin(clock.now(), Origin.SHOP, "server", clock.isDemo());
        journal.note(new FirstPinSet(origin, owner));
        pins.replace(owner, pins.hash(pin), origin.at().wall(), true);
        LOG.warn("badge {} has a first PIN: read it in {} and delete the file", owner, file);
    }
}
