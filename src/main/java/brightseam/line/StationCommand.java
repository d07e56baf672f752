package brightseam.line;

import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.Syntax;

/** What can be asked of one station. */
public sealed interface StationCommand {

    /** Which station. */
    StationId station();

    /** When, by whom and where. */
    Origin origin();

    /** Brings a station into use; see {@link Station} for the parts. */
    record RegisterStation(
            StationId station, String stationClass, String title, boolean needsQualification, Origin origin)
            implements StationCommand {
        /** Refuses a class that is not lower-case words parted by hyphens, and an empty or overlong title. */
        public RegisterStation {
            stationClass = Syntax.slug("station class", stationClass);
            title = Syntax.text("title", title, 60);
        }
    }

    /** Stops the use of a station, with the reason in at most 200 characters. */
    record TakeOutOfUse(StationId station, String reason, Origin origin) implements StationCommand {
        /** Strips the reason; refuses an empty or overlong one. */
        public TakeOutOfUse {
            reason = Syntax.text("reason", reason, 200);
        }
    }

    /** Allows the use again. */
    record PutBackIntoUse(StationId station, Origin origin) implements StationCommand {}
}
