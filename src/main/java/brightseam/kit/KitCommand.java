package brightseam.kit;

import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import brightseam.kernel.Syntax;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What can be asked of one kit. */
public sealed interface KitCommand {

    /** Which kit. */
    KitId kit();

    /** When, by whom and where. */
    Origin origin();

    /** Begins a kit; see {@link Kit} for the parts. */
    record OpenKit(KitId kit, String title, Optional<Instant> sessionDue, Origin origin) implements KitCommand {
        /** Strips the title; refuses an empty one or more than 80 characters. */
        public OpenKit {
            title = Syntax.text("title", title, 80);
        }
    }

    /** Moves the chamber session; empty where it is no longer known. */
    record ChangeSessionDue(KitId kit, Optional<Instant> sessionDue, Origin origin) implements KitCommand {}

    /** Adds lines, all or none. */
    record AddLines(KitId kit, List<KitLine> lines, Origin origin) implements KitCommand {
        /** Copies the lines and refuses none. */
        public AddLines {
            lines = List.copyOf(lines);
            if (lines.isEmpty()) {
                throw new IllegalArgumentException("no lines to add");
            }
        }
    }

    /** Says what the chamber session needs besides parts and filler, in the place of what was set before. */
    record SetNeeds(KitId kit, List<SetNeed> needs, Origin origin) implements KitCommand {
        /** Copies the list; none is a list too. */
        public SetNeeds {
            needs = List.copyOf(needs);
        }
    }

    /** Ends a kit: its session is over, or will not be. */
    record CloseKit(KitId kit, Origin origin) implements KitCommand {}
}
