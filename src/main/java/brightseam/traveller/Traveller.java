package brightseam.traveller;

import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.ProcedureRef;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A traveller as its events have made it.
 *
 * @param id its label
 * @param parent the traveller that it was set apart from, where it was
 * @param kit the kit that it belongs to
 * @param part what the pieces are
 * @param pieces numbers of the pieces still in the lot, ascending; numbers are kept when a lot is parted
 * @param heat their heat
 * @param procedure the revision that it follows to its end
 * @param route the steps of that revision in order
 * @param releasedAt when it was released
 * @param runs the passages that count, by step
 * @param superseded passages that a return has superseded, oldest first
 * @param placement the bin that the pieces are in
 * @param window their clean window
 * @param nonconformances all of them, by number
 * @param phase where it is in its life
 * @param passedInBy the step that passed the pieces in, while that counts
 * @param session the chamber session that they were passed in in, while that counts
 * @param arcs runs of the joints that pieces of the lot are part of, oldest first
 * @param glovesSpent whether the gloves touched something else and no new ones were scanned since
 */
public record Traveller(
        TravellerId id,
        Optional<TravellerId> parent,
        KitId kit,
        PartIdentity part,
        List<Integer> pieces,
        HeatId heat,
        ProcedureRef procedure,
        List<StepId> route,
        Moment releasedAt,
        Map<StepId, StepRun> runs,
        List<StepRun> superseded,
        Optional<Placement> placement,
        Window window,
        List<Nonconformance> nonconformances,
        Phase phase,
        Optional<StepId> passedInBy,
        Optional<SessionId> session,
        List<ArcRun> arcs,
        boolean glovesSpent) {

    /** The state that {@code events} make; empty where there are none. */
    public static Optional<Traveller> fold(Collection<? extends TravellerEvent> events) {
        Optional<Traveller> state = Optional.empty();
        for (TravellerEvent event : events) {
            state = Optional.of(Evolution.evolve(state, event));
        }
        return state;
    }

    /** The state after {@code events} too. */
    public Traveller after(Collection<? extends TravellerEvent> events) {
        Traveller state = this;
        for (TravellerEvent event : events) {
            state = Evolution.evolve(Optional.of(state), event);
        }
        return state;
    }

    /** The passage through {@code step} that counts, where it was begun. */
    public Optional<StepRun> run(StepId step) {
        return Optional.ofNullable(runs.get(step));
    }

    /** The first step that is not signed; empty where all are. */
    public Optional<StepId> currentStep() {
        return route.stream().filter(step -> !isSigned(step)).findFirst();
    }

    /** Whether {@code step} is signed in the passage that counts. */
    public boolean isSigned(StepId step) {
        return run(step).filter(StepRun::isSigned).isPresent();
    }

    /** The nonconformances that nobody has decided. */
    public List<Nonconformance> openNonconformances() {
        return nonconformances.stream().filter(Nonconformance::isOpen).toList();
    }

    /** Whether an open nonconformance stops it. */
    public boolean isInQuarantine() {
        return !hasEnded() && !openNonconformances().isEmpty();
    }

    /** Whether something that touched the pieces is under suspicion and nobody has decided yet. */
    public boolean isSuspect() {
        return openNonconformances().stream().anyMatch(nc -> nc.cause() == Nonconformance.Cause.SUSPECT);
    }

    /** Whether nothing more can be done with it. A closed one comes back when it is put under suspicion. */
    public boolean hasEnded() {
        return phase == Phase.SCRAPPED || phase == Phase.CLOSED && openNonconformances().isEmpty();
    }

    /** Which passage through {@code step} comes next, or runs: 1 the first time. */
    public int pass(StepId step) {
        return run(step).map(StepRun::pass)
                .orElseGet(() -> 1 + (int) superseded.stream().filter(run -> run.step().equals(step)).count());
    }

    /** The run of a joint that burns now, as far as anybody has said. */
    public Optional<ArcRun> burning() {
        return arcs.stream().filter(ArcRun::isBurning).findFirst();
    }

    int nextNonconformance() {
        return 1 + nonconformances.stream().mapToInt(Nonconformance::number).max().orElse(0);
    }
}
