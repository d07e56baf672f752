package brightseam.session.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.session.ChamberSession;
import brightseam.session.Fitness;
import brightseam.session.GasLimits;
import brightseam.session.Item;
import brightseam.session.ListLine;
import brightseam.session.Lock;
import brightseam.session.LockNeed;
import brightseam.session.LockPass;
import brightseam.session.MeterFact;
import brightseam.session.Placed;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A session as screens show it: what is in it, what is missing by name, and what stands against each next deed. The
 * reasons come from the same rules that decide; roles and cautions, which are asked for at the deed, are left out.
 *
 * @param session its state
 * @param version the version of its stream
 * @param kitTitle what people call the kit
 * @param now the moment that all of this holds at
 * @param list the list as it stands now, line by line
 * @param againstClosing what stands against shutting the chamber; empty where it may be shut, or is
 * @param againstPurge what stands against starting the purge; empty where it may start, or runs
 * @param againstOpening what stands against opening the chamber; empty where it may be opened
 * @param weldsToSign after the session, travellers whose weld step lacks nothing but its signature
 * @param gas the gas and its meters
 * @param outlook what a purge from now would take; empty where the chamber is not registered
 * @param lock the lock; empty where the chamber has none
 */
public record SessionView(ChamberSession session, long version, String kitTitle, Moment now, List<ListLine> list,
        List<Refusal> againstClosing, List<Refusal> againstPurge, List<Refusal> againstOpening,
        List<TravellerId> weldsToSign, GasView gas,
        Optional<ChamberGear.Outlook> outlook, Optional<LockView> lock) {

    /** Copies the lists. */
    public SessionView {
        list = List.copyOf(list);
        againstClosing = List.copyOf(againstClosing);
        againstPurge = List.copyOf(againstPurge);
        againstOpening = List.copyOf(againstOpening);
        weldsToSign = List.copyOf(weldsToSign);
    }

    /**
     * The gas of a session.
     *
     * @param limits what it has to keep to: those of the running purge, else those of the register
     * @param oxygen the oxygen meter now
     * @param moisture the moisture meter now
     * @param room the room's oxygen monitor now, in percent
     * @param fitness what the readings say now
     * @param purgedFor how long the purge has run; zero where none runs
     * @param forecast how long it was expected to take when it began
     */
    public record GasView(Optional<GasLimits> limits, Optional<MeterFact> oxygen, Optional<MeterFact> moisture,
            Optional<MeterFact> room, Fitness fitness, Duration purgedFor, Optional<Duration> forecast) {

        /** Since when it is fit to weld by the readings. */
        public Optional<Moment> fitSince() {
            return fitness instanceof Fitness.Fit fit ? Optional.of(fit.since()) : Optional.empty();
        }
    }

    /**
     * The lock of a session.
     *
     * @param doors which door is open, or what goes on behind shut ones
     * @param readyInner whether both doors are shut and the gas in it lets the inner one open
     * @param inbound what lies in it on its way in
     * @param outbound what lies in it on its way out
     * @param oxygen its oxygen meter now
     * @param need what its purge needs; empty while none runs
     * @param purgedFor how long it has been purged; zero while it is not
     * @param readyAt when the time is over; empty where a meter or cycles decide
     * @param cyclesDone cycles so far
     * @param oxygenPpmAfterOpening what the chamber would have if the inner door opened now, at worst
     * @param moves each deed with what stands against it now; the deed may be done where nothing does
     */
    public record LockView(Lock.Doors doors, boolean readyInner, List<Item> inbound, List<Item> outbound,
            Optional<MeterFact> oxygen, Optional<LockNeed> need, Duration purgedFor, Optional<Moment> readyAt,
            int cyclesDone, Optional<BigDecimal> oxygenPpmAfterOpening, Map<LockMove, List<Refusal>> moves) {

        /** The deeds that may be done now, in the order in which they are usually done. */
        public List<LockMove> offered() {
            return Arrays.stream(LockMove.values())
                    .filter(move -> moves.getOrDefault(move, List.of()).isEmpty()).toList();
        }

        /** Whether things may be put in from outside and taken out to there. */
        public boolean takesScansOutside() {
            return doors == Lock.Doors.OUTER_OPEN;
        }

        /** Whether things may be put in from the chamber. */
        public boolean takesScansInside() {
            return doors == Lock.Doors.INNER_OPEN;
        }
    }

    /** The lines of the list that keep the chamber open. */
    public List<ListLine> missing() {
        return list.stream().filter(line -> !line.isMet()).toList();
    }

    /** What was scanned and is not on the list, in the order of the scans. */
    public List<Placed> besidesTheList() {
        return session.items().stream()
                .filter(one -> list.stream().noneMatch(line -> line.need().isMetBy(one.item()))).toList();
    }

    /** Every opening of the inner door, latest first. */
    public List<LockPass> passes() {
        return session.passes().reversed();
    }
}
