package brightseam.report;

import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import java.util.List;

/** What befell the lot besides its steps and nonconformances. */
public sealed interface Incident {

    /** When. */
    Moment at();

    /** Whose badge. */
    Who by();

    /** Back to a step; what was done from there on is superseded. */
    record Returned(Moment at, Who by, String step, String reason, List<String> superseded) implements Incident {}

    /** Something other than clean gloves touched the pieces. */
    record Touched(Moment at, Who by, String what) implements Incident {}

    /** The gloves touched something else and came off; the pieces were not touched with them since. */
    record GlovesSpent(Moment at, Who by, String what) implements Incident {}

    /** Pieces left this lot and go on as {@code child}. */
    record PiecesLeft(Moment at, Who by, TravellerId child, List<Integer> pieces, String reason, Mark mark)
            implements Incident {}

    /** This traveller was parted from {@code parent}, whose record up to then is its own. */
    record Parted(Moment at, Who by, TravellerId parent, long parentVersion, List<Integer> pieces, String reason,
            Mark mark) implements Incident {}

    /** Pieces left the lot as scrap. */
    record Scrapped(Moment at, Who by, List<Integer> pieces) implements Incident {}
}
