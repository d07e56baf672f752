package brightseam.report;

import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import brightseam.traveller.Contact;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One passage through one step.
 *
 * @param number 1 the first time, 2 after a return
 * @param startedAt when it was begun
 * @param startedBy by whom
 * @param tablet on which tablet
 * @param station where; empty for an inspection point
 * @param bins where the pieces lay from its start to its signature or to the start of the next step, in order
 * @param gloves which gloves were confirmed
 * @param cautionsRead titles of the cautions that were confirmed as read
 * @param loadWith other travellers in the same basket
 * @param contacts what touched the pieces, in order
 * @param gap the time since the step before, where it was limited
 * @param hold its hold, where it was begun
 * @param readings everything read, in order
 * @param mark its signature or stamp
 * @param remark what the inspector wrote beside the stamp
 * @param superseded by which return, where one undid it
 * @param late what was stated, where it had been done before it was entered
 */
public record Pass(
        int number,
        Moment startedAt,
        Who startedBy,
        String tablet,
        Optional<StationId> station,
        List<Stay> bins,
        Optional<String> gloves,
        List<String> cautionsRead,
        List<TravellerId> loadWith,
        List<Contact> contacts,
        Optional<GapTaken> gap,
        Optional<HoldTaken> hold,
        List<ReadingLine> readings,
        Optional<Mark> mark,
        String remark,
        Optional<Superseded> superseded,
        Optional<Late> late) {

    /** That the step was done at {@code doneAt} on the wall clock, as {@code mark} states. */
    public record Late(Instant doneAt, String reason, Mark mark) {}

    /** A bin that the pieces lay in. */
    public record Stay(BinId bin, BinClass binClass) {}

    /** Why a pass does not count any more. */
    public record Superseded(Moment at, Who by, String reason) {}

    /** Copies the lists. */
    public Pass {
        bins = List.copyOf(bins);
        cautionsRead = List.copyOf(cautionsRead);
        loadWith = List.copyOf(loadWith);
        contacts = List.copyOf(contacts);
        readings = List.copyOf(readings);
    }
}
