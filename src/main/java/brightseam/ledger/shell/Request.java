package brightseam.ledger.shell;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.NewEvent;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/** What waits for the writer. */
sealed interface Request {

    /** Tells whoever waits that nothing came of it. */
    void refuse(String reason);

    /** A caller's appends, content in canonical form, and where the answer goes. */
    record Store(List<Append> appends, CompletableFuture<Appended> answer) implements Request {

        private static final int JSON_LENGTH_MAX = 1_000_000;

        /** Brings every event of {@code appends} into canonical form; see {@link CanonicalJson} for what is refused. */
        static Store of(List<Append> appends) {
            return new Store(appends.stream().map(Store::canonical).toList(), new CompletableFuture<>());
        }

        @Override
        public void refuse(String reason) {
            answer.complete(new Appended.NotStored(reason));
        }

        private static Append canonical(Append append) {
            return new Append(
                    append.stream(),
                    append.expectedVersion(),
                    append.events().stream().map(Store::canonical).toList());
        }

        private static NewEvent canonical(NewEvent event) {
            String json = CanonicalJson.object(event.json());
            if (json.length() > JSON_LENGTH_MAX) {
                throw new IllegalArgumentException("an event of more than a million characters");
            }
            return new NewEvent(event.type(), json);
        }
    }

    /** Work that must not run beside a write. */
    record Alone(Runnable work, CompletableFuture<Void> done) implements Request {
        @Override
        public void refuse(String reason) {
            done.completeExceptionally(new IllegalStateException(reason));
        }
    }

    /** The last request: the writer ends. */
    record End() implements Request {
        @Override
        public void refuse(String reason) {
            // Nobody waits for it.
        }
    }
}
