package brightseam.kit;

import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What happened to one kit. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface KitEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which kit. */
    KitId kit();

    /** It was begun. */
    record Opened(Origin origin, KitId kit, String title, Optional<Instant> sessionDue) implements KitEvent {}

    /** Its chamber session was moved. */
    record SessionDueChanged(Origin origin, KitId kit, Optional<Instant> sessionDue) implements KitEvent {}

    /** Lines were added. */
    record LinesAdded(Origin origin, KitId kit, List<KitLine> lines) implements KitEvent {
        /** Copies the list. */
        public LinesAdded {
            lines = List.copyOf(lines);
        }
    }

    /** What its chamber session needs besides parts and filler was set. */
    record NeedsSet(Origin origin, KitId kit, List<SetNeed> needs) implements KitEvent {
        /** Copies the list. */
        public NeedsSet {
            needs = List.copyOf(needs);
        }
    }

    /** It was ended. */
    record Closed(Origin origin, KitId kit) implements KitEvent {}
}
