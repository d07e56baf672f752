package brightseam.kit;

import brightseam.kernel.KitId;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything that one chamber session needs.
 *
 * @param id its label
 * @param title what people call it
 * @param sessionDue when the chamber session is to begin; empty where that is not set
 * @param lines sorted by number
 * @param needs what its session needs besides parts and filler; empty where nobody set that, so that the usual holds
 * @param closed whether it no longer changes
 */
public record Kit(KitId id, String title, Optional<Instant> sessionDue, List<KitLine> lines,
        Optional<List<SetNeed>> needs, boolean closed) {

    /** Copies the lists. */
    public Kit {
        lines = List.copyOf(lines);
        needs = needs.map(List::copyOf);
    }

    /** A kit whose session needs the usual. */
    public Kit(KitId id, String title, Optional<Instant> sessionDue, List<KitLine> lines, boolean closed) {
        this(id, title, sessionDue, lines, Optional.empty(), closed);
    }

    /** The kit after {@code event}; {@code before} is empty for the first one only. */
    public static Kit evolve(Optional<Kit> before, KitEvent event) {
        return switch (event) {
            case KitEvent.Opened first ->
                new Kit(first.kit(), first.title(), first.sessionDue(), List.of(), false);
            case KitEvent.SessionDueChanged change -> known(before, event).due(change.sessionDue());
            case KitEvent.LinesAdded added -> known(before, event).plus(added.lines());
            case KitEvent.NeedsSet set -> known(before, event).needing(set.needs());
            case KitEvent.Closed ignored -> known(before, event).close();
        };
    }

    /** The lowest number above those of all lines. */
    public int nextLineNumber() {
        return lines.isEmpty() ? 1 : lines.getLast().lineNumber() + 1;
    }

    private static Kit known(Optional<Kit> before, KitEvent event) {
        return before.orElseThrow(() -> new IllegalArgumentException("not opened: " + event.kit()));
    }

    private Kit due(Optional<Instant> changed) {
        return new Kit(id, title, changed, lines, needs, closed);
    }

    private Kit plus(List<KitLine> more) {
        List<KitLine> all = Stream.concat(lines.stream(), more.stream())
                .sorted(Comparator.comparingInt(KitLine::lineNumber))
                .toList();
        return new Kit(id, title, sessionDue, all, needs, closed);
    }

    private Kit needing(List<SetNeed> set) {
        return new Kit(id, title, sessionDue, lines, Optional.of(set), closed);
    }

    private Kit close() {
        return new Kit(id, title, sessionDue, lines, needs, true);
    }
}
