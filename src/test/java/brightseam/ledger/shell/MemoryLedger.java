package brightseam.ledger.shell;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.erdtman.jcs.JsonCanonicalizer;

/**
 * A ledger for tests that keeps its entries in memory: canonical JSON, expected versions, all or nothing, projections
 * before listeners. Its hashes chain, but over a plain text of its own, not over the envelope that verifiers use.
 */
public final class MemoryLedger implements Ledger {

    private static final String NO_PREVIOUS = "0".repeat(64);

    private final List<Projection> projections;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Consumer<List<Entry>>> listeners = new CopyOnWriteArrayList<>();
    private String failure = "";

    /** A ledger without an entry that keeps {@code projections} up to date. */
    public MemoryLedger(Projection... projections) {
        this.projections = List.of(projections);
    }

    /** Makes every append from here on fail with {@code reason}; an empty reason ends that. */
    public synchronized void failWith(String reason) {
        failure = reason;
    }

    @Override
    public Appended append(List<Append> appends) {
        Appended appended = store(appends);
        if (appended instanceof Appended.Stored stored && !stored.entries().isEmpty()) {
            listeners.forEach(listener -> listener.accept(stored.entries()));
        }
        return appended;
    }

    @Override
    public List<Entry> read(StreamName stream) {
        return readAfter(stream, 0);
    }

    @Override
    public synchronized List<Entry> readAfter(StreamName stream, long version) {
        return entries.stream()
                .filter(entry -> entry.stream().equals(stream) && entry.version() > version)
                .toList();
    }

    @Override
    public synchronized List<Entry> readAllAfter(long position, int limit) {
        return entries.stream().filter(entry -> entry.position() > position).limit(limit).toList();
    }

    @Override
    public long version(StreamName stream) {
        return read(stream).size();
    }

    @Override
    public Subscription onStored(Consumer<List<Entry>> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private synchronized Appended store(List<Append> appends) {
        if (!failure.isEmpty()) {
            return new Appended.NotStored(failure);
        }
        Map<StreamName, Long> versions = new HashMap<>();
        List<Entry> added = new ArrayList<>();
        for (Append append : appends) {
            long found = versions.computeIfAbsent(append.stream(), this::version);
            if (found != append.expectedVersion()) {
                return new Appended.Conflict(append.stream(), append.expectedVersion(), found);
            }
            for (NewEvent event : append.events()) {
                added.add(entry(append.stream(), ++found, event, added));
            }
            versions.put(append.stream(), found);
        }
        added.forEach(entry -> projections.forEach(projection -> projection.apply(entry)));
        entries.addAll(added);
        return new Appended.Stored(List.copyOf(added));
    }

    private Entry entry(StreamName stream, long version, NewEvent event, List<Entry> before) {
        List<Entry> chain = new ArrayList<>(read(stream));
        before.stream().filter(entry -> entry.stream().equals(stream)).forEach(chain::add);
        String previous = chain.isEmpty() ? NO_PREVIOUS : chain.getLast().hash();
        String json = canonical(event.json());
        String hash = sha256(String.join("\n", previous, stream.value(), "" + version, event.type(), json));
        return new Entry(entries.size() + before.size() + 1L, stream, version, event.type(), json, previous, hash);
    }

    private static String canonical(String json) {
        try {
            return new JsonCanonicalizer(json).getEncodedString();
        } catch (IOException broken) {
            throw new UncheckedIOException("an event that is not a JSON object", broken);
        }
    }

    private static String sha256(String text) {
        try {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
