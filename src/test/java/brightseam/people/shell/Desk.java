package brightseam.people.shell;

import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.ledger.Entry;
import brightseam.people.PersonCommand.Register;
import brightseam.people.PinLife;
import brightseam.people.Role;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/** All of people's services on a database in memory, with a clock that the test moves. */
final class Desk {

    static final BadgeId ADA = new BadgeId("P-0001");
    static final BadgeId BO = new BadgeId("P-0002");
    static final String PIN = "2580";

    private Instant now = Instant.parse("2031-03-04T12:00:00Z");
    final RealTime time = () -> now;
    final StoppedClock clock = new StoppedClock();
    final JdbcClient jdbc = database();
    final PersonRows rows = new PersonRows(jdbc);
    final MemoryLedger ledger = new MemoryLedger(rows);
    final PersonReader reader = new PersonReader(jdbc, ledger);
    final PersonJournal journal = new PersonJournal(ledger);
    final PinHashes hashes = new PinHashes(new Pepper(new byte[32]), 4);
    final Pins pins = new Pins(jdbc, time, hashes, new PinLife(365, 14));
    final Places places = new Places(time);
    final OpeningCode code = new OpeningCode();
    final Tablets tablets = new Tablets(jdbc, time, 15);
    final People people = new People(reader, journal, pins, tablets, clock);
    final Authenticator authenticator =
            new Authenticator(reader, journal, pins, places, tablets, time, clock);
    final SignIn signIn = new SignIn(authenticator, reader, journal, tablets, clock);
    final PinChange pinChange = new PinChange(authenticator, people, signIn, clock);

    FirstRun firstRun() {
        return new FirstRun(reader, journal, pins, code, places, clock);
    }

    /** Ada, the administrator, and Bo with {@code roles}, both with {@link #PIN}. */
    Desk staffed(Role... roles) {
        people.run(new Register(shop(), ADA, "Ada Moreau", List.of(Role.ADMINISTRATOR)));
        people.run(new Register(shop(), BO, "Bo Lindqvist", List.of(roles)));
        people.setPin(shop(), ADA, PIN);
        people.setPin(shop(), BO, PIN);
        return this;
    }

    void pass(Duration duration) {
        now = now.plus(duration);
    }

    Origin shop() {
        return by(Origin.SHOP);
    }

    Origin by(BadgeId badge) {
        return new Origin(clock.now(), badge, "TAB-TEST", false);
    }

    List<String> types(BadgeId badge) {
        return ledger.read(PersonCodec.person(badge)).stream().map(Entry::type).toList();
    }

    private static JdbcClient database() {
        return FreshDatabase.migrated();
    }
}
