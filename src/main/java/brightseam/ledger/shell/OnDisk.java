package brightseam.ledger.shell;

import brightseam.ledger.Entry;
import jakarta.annotation.PreDestroy;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** How far the ledger would survive a power cut. What is committed and not yet forced does not count. */
@Service
public final class OnDisk implements AutoCloseable {

    private final EntryRows rows;
    private final boolean commitIsForced;
    private final AtomicLong told = new AtomicLong();
    private final Subscription subscription;

    OnDisk(DataSource source, JdbcClient jdbc, Ledger ledger) {
        this.rows = new EntryRows(jdbc);
        ForcedWrite forcedWrite = ForcedWrite.of(source);
        this.commitIsForced = !ForcedWrite.isNeeded(source);
        this.subscription = ledger.onStored(this::hear);
        long found = rows.lastPosition();
        forcedWrite.force();
        told.accumulateAndGet(found, Math::max);
    }

    /** The last position that is on disk; 0 where there is none. */
    public long position() {
        return commitIsForced ? rows.lastPosition() : told.get();
    }

    /** The last position that is stored, whether it is known to be on disk or not. */
    public long stored() {
        return rows.lastPosition();
    }

    /** Hears no more. */
    @Override
    @PreDestroy
    public void close() {
        subscription.close();
    }

    private void hear(List<Entry> stored) {
        told.accumulateAndGet(stored.getLast().position(), Math::max);
    }
}
