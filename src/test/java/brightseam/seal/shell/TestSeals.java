package brightseam.seal.shell;

import brightseam.kernel.shell.ShopClock;
import brightseam.kernel.shell.TestClock;
import brightseam.ledger.Append;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.OnDisk;
import brightseam.ledger.shell.TestLedger;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** A sealed ledger in a folder of its own, without Spring. */
public final class TestSeals implements AutoCloseable {

    /** Long enough that nothing is sealed by itself while a test runs. */
    static final long NEVER_MILLIS = 3_600_000;

    private final TestLedger ledger;
    private final OnDisk onDisk;
    private final Seals seals;

    private TestSeals(ShopClock clock, SealSettings settings) {
        this.ledger = TestLedger.inFolder(settings.data());
        this.onDisk = ledger.onDisk();
        Optional<Seals> made = Optional.empty();
        try {
            made = Optional.of(new Seals(ledger.ledger(), onDisk, clock, new JdbcTemplate(ledger.source()),
                    new JdbcTransactionManager(ledger.source()), () -> true, settings));
        } finally {
            if (made.isEmpty()) {
                onDisk.close();
                ledger.close();
            }
        }
        this.seals = made.orElseThrow();
    }

    /** Seals only when it is asked for a head, and at its end. */
    public static TestSeals in(Path folder) {
        return in(folder, new TestClock());
    }

    /** The same by {@code clock}. */
    public static TestSeals in(Path folder, ShopClock clock) {
        return with(clock, settings(folder, ""));
    }

    static TestSeals with(ShopClock clock, SealSettings settings) {
        return new TestSeals(clock, settings);
    }

    static SealSettings settings(Path folder, String lossNoted) {
        return new SealSettings(folder, "", "", "", NEVER_MILLIS, 30, lossNoted, "", 60);
    }

    /** The seals. */
    public Seals seals() {
        return seals;
    }

    /** The ledger. */
    public TestLedger ledger() {
        return ledger;
    }

    /** Stores {@code count} entries on the stream {@code test/IDENTITY}, in one append. */
    public void store(String identity, int count) {
        StreamName stream = StreamName.of("test", identity);
        long version = ledger.ledger().version(stream);
        List<NewEvent> events = IntStream.range(0, count)
                .mapToObj(i -> new NewEvent("noted.1", "{\"number\":" + (version + i) + ",\"who\":\"Zoë\"}")).toList();
        ledger.ledger().append(List.of(new Append(stream, version, events)));
    }

    @Override
    public void close() {
        seals.close();
        onDisk.close();
        ledger.close();
    }
}
