package brightseam.traveller;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One passage through one step; rework makes a new one and keeps the old.
 *
 * @param step which step
 * @param pass 1 the first time, 2 after a return, and so on
 * @param startedAt when the fabricator began
 * @param startedBy whose badge
 * @param station where
 * @param loadWith other travellers in the same basket, sorted
 * @param holdBegunAt when the hold began
 * @param holdEndedAt when it ended
 * @param readings in the order they were taken; a repeated reading keeps the earlier one before it
 * @param signedAt when it was signed or stamped
 * @param signature by whom
 * @param late what was stated where the step had been done before anybody could write it down
 */
public record StepRun(
        StepId step,
        int pass,
        Moment startedAt,
        BadgeId startedBy,
        Optional<StationId> station,
        List<TravellerId> loadWith,
        Optional<Moment> holdBegunAt,
        Optional<Moment> holdEndedAt,
        List<Reading> readings,
        Optional<Moment> signedAt,
        Optional<Signature> signature,
        Optional<Late> late) {

    /** A step that was entered late: done at {@code doneAt} on the wall clock, as {@code by} states. */
    public record Late(Instant doneAt, String reason, BadgeId by) {

        static Late of(TravellerEvent.StepEnteredLate event) {
            return new Late(event.doneAt(), event.reason(), event.by());
        }
    }

    static StepRun started(StepId step, int pass, TravellerEvent.StepStarted event) {
        return new StepRun(step, pass, event.origin().at(), event.origin().by(), event.station(), event.loadWith(),
                Optional.empty(), Optional.empty(), List.of(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Whether it was signed or stamped. */
    public boolean isSigned() {
        return signature.isPresent();
    }

    /** Whether its hold runs. */
    public boolean isHolding() {
        return holdBegunAt.isPresent() && holdEndedAt.isEmpty();
    }

    /** The latest reading named {@code id}. */
    public Optional<Reading> reading(String id) {
        return readings.stream().filter(reading -> reading.id().equals(id)).reduce((earlier, later) -> later);
    }

    StepRun holdBegun(Moment at) {
        return new StepRun(step, pass, startedAt, startedBy, station, loadWith, Optional.of(at), holdEndedAt, readings,
                signedAt, signature, late);
    }

    StepRun holdEnded(Moment at) {
        return new StepRun(step, pass, startedAt, startedBy, station, loadWith, holdBegunAt, Optional.of(at), readings,
                signedAt, signature, late);
    }

    StepRun withReadings(List<Reading> next) {
        return new StepRun(step, pass, startedAt, startedBy, station, loadWith, holdBegunAt, holdEndedAt,
                List.copyOf(next), signedAt, signature, late);
    }

    StepRun reading(Reading reading) {
        List<Reading> next = new ArrayList<>(readings);
        next.add(reading);
        return withReadings(next);
    }

    StepRun signed(Moment at, Signature mark) {
        return new StepRun(step, pass, startedAt, startedBy, station, loadWith, holdBegunAt, holdEndedAt, readings,
                Optional.of(at), Optional.of(mark), late);
    }

    StepRun enteredLate(Late stated) {
        return new StepRun(step, pass, startedAt, startedBy, station, loadWith, holdBegunAt, holdEndedAt, readings,
                signedAt, signature, Optional.of(stated));
    }
}
