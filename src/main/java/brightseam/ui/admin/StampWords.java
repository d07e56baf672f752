package brightseam.ui.admin;

import brightseam.people.PersonEvent.OfStamp;
import brightseam.people.Stamp;
import brightseam.words.Words;
import java.time.ZoneId;

/** What becomes of stamps, in words. */
final class StampWords {

    private StampWords() {}

    static String state(Stamp.State state) {
        return switch (state) {
            case HELD -> "held";
            case WITHDRAWN -> "withdrawn, not given back";
            case RETURNED -> "returned";
            case LOST -> "LOST";
            case VOIDED -> "voided";
        };
    }

    /** {@code 14 Oct 2031 06:10:09 lost, by Ada Moreau: fell into the pickle tank}. */
    static String line(OfStamp event, String by, ZoneId zone) {
        String what = Stamp.state(event) == Stamp.State.HELD ? "issued" : state(Stamp.state(event));
        String reason = Stamp.reason(event);
        return Words.stamp(event.origin().at().wall(), zone) + " " + what + ", by " + by
                + (reason.isEmpty() ? "" : ": " + reason);
    }
}
