package brightseam.seal.shell;

import brightseam.seal.shell.Seals.Sealed;
import brightseam.seal.shell.Seals.WitnessState;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Sends the newest head to every witness, at most so often, each on a thread of its own, so that neither sealing nor
 * another witness waits for one. What fails is tried again the next time, with the head that is newest then.
 */
final class Witnesses implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Witnesses.class);
    private static final long END_WAIT_SECONDS = 5;

    private final Supplier<Optional<Sealed>> latest;
    private final Predicate<String> isExtended;
    private final List<Sent> all = new ArrayList<>();

    /**
     * Begins to send.
     *
     * @param places folders and addresses, parted by commas
     * @param latest the newest head
     * @param isExtended whether this ledger extends the head of a note
     */
    Witnesses(String places, long seconds, Supplier<Optional<Sealed>> latest, Predicate<String> isExtended) {
        this.latest = latest;
        this.isExtended = isExtended;
        Arrays.stream(places.split(",")).map(String::strip).filter(place -> !place.isEmpty())
                .forEach(place -> all.add(new Sent(witness(place))));
        all.forEach(sent -> sent.thread.scheduleWithFixedDelay(
                () -> send(sent), Math.min(1, seconds), seconds, TimeUnit.SECONDS));
    }

    /** How each of them stands. */
    List<WitnessState> states() {
        return all.stream().map(sent -> sent.state).toList();
    }

    /** Sends what is newest to each, now, and waits a little for it. */
    void sendNow() {
        List<Map.Entry<Sent, Future<?>>> sending = new ArrayList<>();
        all.forEach(sent -> {
            try {
                sending.add(Map.entry(sent, sent.thread.submit(() -> send(sent))));
            } catch (RejectedExecutionException closed) {
                LOG.debug("a witness was closed before");
            }
        });
        sending.forEach(one -> {
            try {
                one.getValue().get(END_WAIT_SECONDS, TimeUnit.SECONDS);
            } catch (TimeoutException | ExecutionException late) {
                LOG.debug("a witness does not answer in time", late);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
            }
        });
    }

    /** Sends what is newest once more and ends. */
    @Override
    public void close() {
        sendNow();
        all.forEach(sent -> sent.thread.shutdown());
    }

    private void send(Sent sent) {
        WitnessState before = sent.state;
        Optional<Sealed> head = latest.get();
        if (head.isEmpty() || before.failure().isEmpty() && head.equals(before.last())) {
            return;
        }
        try {
            Optional<String> newest = sent.isCompared ? Optional.empty() : sent.witness.newest();
            if (newest.isPresent() && !isExtended.test(newest.get())) {
                throw new IOException("it has a head that this ledger does not extend: entries that were sealed are"
                        + " gone or others. Compare the two before anything is signed");
            }
            sent.isCompared = true;
            sent.witness.keep(head.get());
            sent.state = new WitnessState(before.place(), head, Optional.empty());
        } catch (IOException | UncheckedIOException | LedgerAltered failure) {
            if (before.failure().isEmpty()) {
                LOG.warn("the witness {} did not take a head: {}", before.place(), failure.toString());
            }
            sent.state = new WitnessState(before.place(), before.last(), Optional.of(reason(failure)));
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static String reason(Exception failure) {
        return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
    }

    private static Witness witness(String place) {
        try {
            return place.matches("(?i)https?://.*")
                    ? new AddressWitness(URI.create(place))
                    : new FolderWitness(Path.of(place).toAbsolutePath());
        } catch (IllegalArgumentException malformed) {
            throw new SealsUnusable("brightseam.witness: neither a folder nor an address: " + malformed.getMessage());
        }
    }

    private static final class Sent {
        private final Witness witness;
        private final ScheduledExecutorService thread = QuietThread.named("ledger-witness");
        private volatile WitnessState state;
        private boolean isCompared;

        private Sent(Witness witness) {
            this.witness = witness;
            this.state = new WitnessState(witness.place(), Optional.empty(), Optional.empty());
        }
    }
}
