package brightseam.ledger.shell;

import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import java.util.ArrayList;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.NestedExceptionUtils;
import org.springframework.transaction.TransactionStatus;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Stores a group of requests in one transaction and forces it onto the disk. Where one of them fails, the group is
 * written anew with a savepoint before each, so that the one that fails is undone alone.
 */
final class GroupStore {

    private static final Logger LOG = LoggerFactory.getLogger(GroupStore.class);

    private final TransactionTemplate transaction;
    private final EntryRows rows;
    private final RequestStore requests;
    private final ForcedWrite forcedWrite;
    private final Settlement settlement;
    private final WriteTurn turn;

    GroupStore(TransactionTemplate transaction, WriteTurn turn, EntryRows rows, RequestStore requests,
            ForcedWrite forcedWrite) {
        this.transaction = transaction;
        this.rows = rows;
        this.requests = requests;
        this.forcedWrite = forcedWrite;
        this.turn = turn;
        this.settlement = new Settlement(
                position -> turn.settled(transaction, () -> rows.hashAt(position)), forcedWrite);
    }

    /**
     * The outcome of every request, in order; what is {@code Stored} is on disk. Throws where the transaction was lost
     * before its commit: then nothing is stored.
     */
    List<Appended> store(List<Request.Store> group) {
        if (!settlement.isSettled()) {
            return group.stream().<Appended>map(one -> new Appended.NotStored(settlement.reason())).toList();
        }
        List<Appended> outcomes = new ArrayList<>();
        try {
            if (!isCommitted(group, outcomes, false)) {
                isCommitted(group, outcomes, true);
            }
        } catch (CommitFailed failed) {
            LOG.error("a commit failed", failed);
            return settled(outcomes, settlement.afterFailedCommit(entries(outcomes)), failed);
        }
        try {
            forcedWrite.force();
            return outcomes;
        } catch (RuntimeException failure) {
            LOG.error("a forced write failed", failure);
            return settled(outcomes, settlement.afterFailedForce(entries(outcomes)), failure);
        }
    }

    /** The root of {@code failure}, in one line for the log and the administrator. */
    static String reason(Throwable failure) {
        Throwable cause = NestedExceptionUtils.getMostSpecificCause(failure);
        return cause.getClass().getSimpleName() + ": " + cause.getMessage();
    }

    /** Writes the group in one transaction; false where a request failed that had no savepoint before it. */
    private boolean isCommitted(List<Request.Store> group, List<Appended> outcomes, boolean savepoints) {
        boolean[] committing = new boolean[1];
        outcomes.clear();
        try {
            transaction.executeWithoutResult(status -> {
                write(group, outcomes, savepoints ? status : null);
                committing[0] = true;
            });
            return true;
        } catch (RuntimeException failure) {
            requests.forget();
            if (committing[0]) {
                throw new CommitFailed(failure);
            }
            if (savepoints) {
                throw failure;
            }
            LOG.warn("a group is written anew, one by one: {}", reason(failure));
            return false;
        }
    }

    private void write(List<Request.Store> group, List<Appended> outcomes, TransactionStatus savepoints) {
        turn.take();
        long position = rows.lastPosition();
        requests.goOnAfter(position);
        for (Request.Store request : group) {
            Appended outcome = savepoints == null
                    ? requests.store(request.appends(), position)
                    : write(request, position, savepoints);
            outcomes.add(outcome);
            if (outcome instanceof Appended.Stored stored) {
                position += stored.entries().size();
            }
        }
    }

    private Appended write(Request.Store request, long position, TransactionStatus status) {
        Object savepoint = status.createSavepoint();
        Appended outcome;
        try {
            outcome = requests.store(request.appends(), position);
        } catch (RuntimeException failure) {
            LOG.error("an append was undone", failure);
            requests.forget();
            status.rollbackToSavepoint(savepoint);
            outcome = new Appended.NotStored(reason(failure));
        }
        status.releaseSavepoint(savepoint);
        return outcome;
    }

    private static List<Appended> settled(List<Appended> outcomes, Settlement.Finding finding, Exception failure) {
        return switch (finding) {
            case STORED -> outcomes;
            case ABSENT, UNKNOWN -> outcomes.stream()
                    .map(outcome -> outcome instanceof Appended.Stored
                            ? new Appended.NotStored(reason(failure))
                            : outcome)
                    .toList();
        };
    }

    private static List<Entry> entries(List<Appended> outcomes) {
        List<Entry> entries = new ArrayList<>();
        for (Appended outcome : outcomes) {
            if (outcome instanceof Appended.Stored stored) {
                entries.addAll(stored.entries());
            }
        }
        return entries;
    }

    /** The transaction was written and its commit failed, so that nobody knows whether it counts. */
    private static final class CommitFailed extends RuntimeException {
        CommitFailed(RuntimeException cause) {
            super(cause);
        }
    }
}
