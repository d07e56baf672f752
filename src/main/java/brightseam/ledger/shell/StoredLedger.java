package brightseam.ledger.shell;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import jakarta.annotation.PreDestroy;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.springframework.transaction.support.TransactionTemplate;

/** The ledger in the shop's database. */
@Component
final class StoredLedger implements Ledger, AutoCloseable {

    private static final long END_WAIT_SECONDS = 20;

    private final EntryRows rows;
    private final Listeners listeners = new Listeners();
    private final LedgerWriter writer;
    private final Optional<Tail> tail;
    private final KnownEnds ends;

    StoredLedger(
            DataSource source, JdbcClient jdbc, PlatformTransactionManager transactions, List<Projection> projections) {
        this.rows = new EntryRows(jdbc);
        WriteTurn turn = WriteTurn.of(source);
        this.tail = turn.isShared() ? Optional.of(new Tail(rows, listeners::tell)) : Optional.empty();
        GroupStore group = new GroupStore(
                new TransactionTemplate(transactions), turn, rows, new RequestStore(rows, projections),
                ForcedWrite.of(source));
        this.ends = new KnownEnds(!turn.isShared());
        this.writer = new LedgerWriter(requests -> stored(group, requests), this::tell);
        tail.ifPresent(Tail::start);
        writer.start();
    }

    @Override
    public Appended append(List<Append> appends) {
        refuseWriterAndTransaction();
        Request.Store request = Request.Store.of(appends);
        writer.submit(request);
        return request.answer().join();
    }

    /** Runs {@code work} while nothing is written, and returns when it has run; throws what it throws. */
    void alone(Runnable work) {
        refuseWriterAndTransaction();
        Request.Alone request = new Request.Alone(work, new CompletableFuture<>());
        writer.submit(request);
        try {
            request.done().join();
        } catch (CompletionException failed) {
            throw failed.getCause() instanceof RuntimeException cause ? cause : failed;
        }
    }

    @Override
    public List<Entry> read(StreamName stream) {
        return rows.after(stream, 0);
    }

    @Override
    public List<Entry> readAfter(StreamName stream, long version) {
        if (ends.isEnd(stream, version)) {
            return List.of();
        }
        long mark = ends.mark();
        List<Entry> found = rows.after(stream, version);
        ends.learned(stream, found.isEmpty() ? version : found.getLast().version(), mark);
        return found;
    }

    @Override
    public List<Entry> readAllAfter(long position, int limit) {
        return rows.allAfter(position, limit);
    }

    @Override
    public long version(StreamName stream) {
        return rows.head(stream).version();
    }

    /** The last position of the whole ledger; 0 where it is empty. */
    long lastPosition() {
        return rows.lastPosition();
    }

    @Override
    public Object changes(String family) {
        return ends.changes(family);
    }

    @Override
    public Subscription onStored(Consumer<List<Entry>> listener) {
        return listeners.add(listener);
    }

    /** Stores what waits, then ends. Later appends are answered as not stored. */
    @Override
    @PreDestroy
    public void close() {
        writer.end(END_WAIT_SECONDS);
        tail.ifPresent(Tail::close);
        listeners.close();
    }

    /** Where others write too, everybody is told from the tail alone, so that each entry is heard once and in order. */
    private void tell(List<Entry> entries) {
        tail.ifPresentOrElse(Tail::wake, () -> listeners.tell(entries));
    }

    private List<Appended> stored(GroupStore group, List<Request.Store> requests) {
        try {
            List<Appended> outcomes = group.store(requests);
            ends.answered(outcomes);
            return outcomes;
        } catch (RuntimeException | Error failure) {
            ends.forget();
            throw failure;
        }
    }

    private void refuseWriterAndTransaction() {
        if (writer.isCurrentThread()) {
            throw new IllegalStateException("a projection never appends");
        }
        if (TransactionSynchronizationManager.isActualTransactionActive()) {
            throw new IllegalStateException("never append inside a transaction: the writer has its own");
        }
    }
}
