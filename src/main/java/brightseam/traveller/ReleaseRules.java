package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
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
        return Rules.check()
                .refuseIf(state.isPresent(), () -> new TravellerRefusal.AlreadyReleased(c.traveller()))
                .refuseIf(c.quantity() < 1 || c.quantity() > PIECES_MAX,
                        () -> new TravellerRefusal.QuantityOutOfRange(c.quantity()))
                .refuseIf(c.heat().onHold(), () -> new TravellerRefusal.HeatOnHold(c.heat().id()))
                .refuseIf(!gradeAllowed, () -> new TravellerRefusal.GradeNotAllowed(
                        c.heat().id(), c.heat().grade(), procedure.grades()))
                .acceptWith(() -> List.of(new TravellerEvent.Released(c.origin(), c.traveller(), c.kit(), c.part(),
                        IntStream.rangeClosed(1, c.quantity()).boxed().toList(), c.heat().id(), procedure.ref(),
                        procedure.route())));
    }
}
