package brightseam.session;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.session.Placed.Where;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A session as its events have made it.
 *
 * @param id its name
 * @param kit what is welded in it
 * @param chamber where
 * @param lockStation the chamber's transfer lock; empty where it has none
 * @param openedAt when check-in began
 * @param phase where it is in its life
 * @param needs the list, as it was last read
 * @param items everything that was laid into the chamber or the lock and not taken back before it was passed in, in the
 *     order of the scans
 * @param leftOut what may stay out
 * @param lock the lock
 * @param gas the gas in the chamber
 * @param passes every opening of the inner door, by number
 * @param closedAt when the chamber was shut
 * @param overAt when it ended or was given up
 * @param argonUsed what it took out of which supply of argon; empty until it is over
 */
public record ChamberSession(
        SessionId id,
        KitId kit,
        StationId chamber,
        Optional<StationId> lockStation,
        Moment openedAt,
        Phase phase,
        List<Need> needs,
        List<Placed> items,
        List<LeftOut> leftOut,
        Lock lock,
        Gas gas,
        List<LockPass> passes,
        Optional<Moment> closedAt,
        Optional<Moment> overAt,
        List<ArgonUse> argonUsed) {

    /** Copies the lists. */
    public ChamberSession {
        needs = List.copyOf(needs);
        items = List.copyOf(items);
        leftOut = List.copyOf(leftOut);
        passes = List.copyOf(passes);
        argonUsed = List.copyOf(argonUsed);
    }

    /** The session after {@code event}; {@code before} is empty for the first one only. */
    public static ChamberSession evolve(Optional<ChamberSession> before, SessionEvent event) {
        return SessionFold.evolve(before, event);
    }

    /** Where {@code label} is; empty where it is not in the session. */
    public Optional<Placed> placed(String label) {
        return items.stream().filter(one -> one.item().label().equals(label)).findFirst();
    }

    /** What is in {@code where}, in the order of the scans. */
    public List<Item> in(Where where) {
        return items.stream().filter(one -> one.where() == where).map(Placed::item).toList();
    }

    /** The travellers in {@code where}, sorted. */
    public List<TravellerId> travellersIn(Where where) {
        return in(where).stream().filter(Item::hasTraveller).map(Item::traveller).sorted().toList();
    }

    /** The travellers that were passed in, those that have left through the lock too, sorted. */
    public List<TravellerId> travellersPassedIn() {
        return items.stream().filter(one -> one.isPassedIn() || one.where() == Where.PASSED_OUT)
                .map(Placed::item).filter(Item::hasTraveller).map(Item::traveller).sorted().toList();
    }

    /** Labels of what lies in the lock, sorted. */
    public List<String> inLock() {
        return items.stream().filter(Placed::isInLock).map(one -> one.item().label()).sorted().toList();
    }

    /** The list, line by line, as it stands against {@code current} needs. */
    public List<ListLine> list(List<Need> current) {
        return current.stream().map(need -> new ListLine(need,
                items.stream().map(Placed::item).filter(need::isMetBy).map(Item::label).toList(),
                leftOut.stream().filter(out -> out.key().equals(need.key())).findFirst())).toList();
    }

    /** The list as it was last read. */
    public List<ListLine> list() {
        return list(needs);
    }

    /** The opening of the inner door that is going on. */
    public Optional<LockPass> passGoingOn() {
        return last().filter(pass -> pass.shutAt().isEmpty());
    }

    /** Openings that are over and of which nobody knows yet what they did to the chamber. */
    public List<LockPass> passesToJudge() {
        return passes.stream().filter(pass -> pass.shutAt().isPresent() && pass.effect().isEmpty()).toList();
    }

    /** The number of the next opening. */
    public int nextPass() {
        return passes.size() + 1;
    }

    private Optional<LockPass> last() {
        return Stream.of(passes).filter(all -> !all.isEmpty()).map(List::getLast).findFirst();
    }
}
