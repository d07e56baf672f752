package brightseam.ui.gear;

import brightseam.chamber.ArgonDemand;
import brightseam.chamber.ArgonNeed;
import brightseam.kernel.Moment;
import brightseam.kit.Kit;
import brightseam.session.ChamberSession;
import brightseam.session.Phase;
import brightseam.session.Purge;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which sessions draw argon: the one that is open, and those of the kits on the board. */
final class Demands {

    private Demands() {}

    /**
     * The open session and every kit with a time.
     *
     * @param need what a session takes as usual
     * @param open the session that is open in the chamber
     * @param kits the kits that wait for a session
     */
    static List<ArgonDemand> of(ArgonNeed.Needed need, Optional<ChamberSession> open, List<Kit> kits, Moment now) {
        Stream<ArgonDemand> running = open.filter(session -> !session.phase().isOver()).stream()
                .map(session -> new ArgonDemand(Optional.of(session.id()), Optional.of(session.kit()), now.wall(),
                        rest(need, session, now)));
        Stream<ArgonDemand> waiting = kits.stream().flatMap(kit -> kit.sessionDue().stream()
                .map(due -> new ArgonDemand(Optional.empty(), Optional.of(kit.id()), later(due, now.wall()), need)));
        return Stream.concat(running, waiting).toList();
    }

    /** Those of {@code open} that wait for their session: none runs, and none has ended. */
    static List<Kit> waiting(List<Kit> open, java.util.function.Function<Kit, List<ChamberSession>> sessionsOf) {
        List<Kit> waiting = new ArrayList<>();
        for (Kit kit : open) {
            boolean had = sessionsOf.apply(kit).stream().anyMatch(session -> session.phase() != Phase.ABANDONED);
            if (!kit.closed() && !had) {
                waiting.add(kit);
            }
        }
        return waiting;
    }

    /** What {@code session} still takes: all of it, the rest of the purge, or only holding. */
    static ArgonNeed.Needed rest(ArgonNeed.Needed need, ChamberSession session, Moment now) {
        Duration since = session.gas().purge().map(Purge::startedAt).map(now::since).orElse(Duration.ZERO);
        return switch (session.phase()) {
            case CHECK_IN, CLOSED -> need;
            case PURGING -> need.afterPurging(since);
            case FIT, UNFIT -> need.oncePurged(positive(need.fit().minus(positive(since.minus(need.purge())))));
            case ENDED, ABANDONED -> need.oncePurged(Duration.ZERO);
        };
    }

    private static Duration positive(Duration time) {
        return time.isNegative() ? Duration.ZERO : time;
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }
}
