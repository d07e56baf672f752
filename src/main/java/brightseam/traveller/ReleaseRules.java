package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.procedure.Procedure;
import brightseam.traveller.TravellerCommand.Release;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** When a lot may be released. */
final class ReleaseRules {

    private static final int PIECES_MAX = 999;

    private ReleaseRules() {}

    static Decision<TravellerEvent> release(Optional<Traveller> state, Procedure procedure, Release c) {
        boolean gradeAllowed = procedure.grades().contains(c.heat().grade());
        return new Broken()
                .when(state.isPresent(), () -> new TravellerRefusal.AlreadyReleased(c.traveller()))
                .when(c.quantity() < 1 || c.quantity() > PIECES_MAX,
                        () -> new TravellerRefusal.QuantityOutOfRange(c.quantity()))
                .when(c.heat().onHold(), () -> new TravellerRefusal.HeatOnHold(c.heat().id()))
                .when(!gradeAllowed, () -> new TravellerRefusal.GradeNotAllowed(
                        c.heat().id(), c.heat().grade(), procedure.grades()))
                .orElse(() -> List.of(new TravellerEvent.Released(c.origin(), c.traveller(), c.kit(), c.part(),
                        IntStream.rangeClosed(1, c.quantity()).boxed().toList(), c.heat().id(), procedure.ref(),
                        procedure.route())));
    }
}
