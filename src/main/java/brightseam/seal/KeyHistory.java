package brightseam.seal;

import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.Syntax;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which key signed from when until when.
 *
 * @param uses the oldest first; the last has no end
 */
public record KeyHistory(List<Use> uses) {

    private static final int REASON_MAX = 200;

    /**
     * One key's time.
     *
     * @param key its public half as text
     * @param from when it was made
     * @param until when it signs for the last time; empty for the newest
     */
    public record Use(String key, Instant from, Optional<Instant> until) {
        /** Whether it signs at {@code now}. */
        public boolean isActive(Instant now) {
            return until.isEmpty() || now.isBefore(until.get());
        }
    }

    /** Copies the list. */
    public KeyHistory {
        uses = List.copyOf(uses);
    }

    /** Before any rotation: {@code key} alone, made at {@code from}. */
    public static KeyHistory of(NoteVerifier key, Instant from) {
        return new KeyHistory(List.of(new Use(key.text(), from, Optional.empty())));
    }

    /** The newest key's use. */
    public Use newest() {
        return uses.getLast();
    }

    /**
     * Whether {@code next} may take over from the newest key, and what follows.
     *
     * @param overlap how long both sign; does not count where the old one is lost
     * @return refused while an earlier overlap runs, unless the old key is lost: three keys under one head help nobody
     * @throws IllegalArgumentException for a missing reason
     */
    public Decision<LogEvent> rotate(NoteVerifier next, Duration overlap, boolean isLost, String reason,
            Origin origin) {
        Instant now = origin.at().wall();
        String why = Syntax.text("reason", reason, REASON_MAX);
        Optional<Instant> running = uses.stream().flatMap(use -> use.until().stream())
                .filter(until -> until.isAfter(now)).findFirst();
        if (running.isPresent() && !isLost) {
            return Decision.refused(List.of(new SealRefusal.KeyOverlapRuns(running.get())));
        }
        return Decision.accepted(List.of(new LogEvent.KeyRotated(newest().key(), newest().from(), next.text(),
                isLost ? now : now.plus(overlap), isLost, why, origin)));
    }

    /** The history after {@code event}; an event that is not about keys changes nothing. */
    public static KeyHistory evolve(Optional<KeyHistory> before, LogEvent event) {
        List<Use> uses = new ArrayList<>(before.map(KeyHistory::uses).orElse(List.of()));
        if (event instanceof LogEvent.KeyRotated rotated) {
            if (uses.isEmpty()) {
                uses.add(new Use(rotated.oldKey(), rotated.oldFrom(), Optional.empty()));
            }
            Instant now = rotated.origin().at().wall();
            uses.replaceAll(use -> use.until().isEmpty()
                    ? new Use(use.key(), use.from(), Optional.of(rotated.oldUntil()))
                    : rotated.isLost() && use.isActive(now)
                            ? new Use(use.key(), use.from(), Optional.of(now)) : use);
            uses.add(new Use(rotated.newKey(), now, Optional.empty()));
        }
        return new KeyHistory(uses);
    }
}
