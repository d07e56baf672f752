package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Collects every broken rule of one command, then turns into a decision. */
final class Broken {

    private final List<Refusal> refusals = new ArrayList<>();

    Broken when(boolean broken, Supplier<? extends Refusal> refusal) {
        if (broken) {
            refusals.add(refusal.get());
        }
        return this;
    }

    Broken add(Optional<? extends Refusal> refusal) {
        refusal.ifPresent(refusals::add);
        return this;
    }

    Broken addAll(List<? extends Refusal> more) {
        refusals.addAll(more);
        return this;
    }

    boolean any() {
        return !refusals.isEmpty();
    }

    /** Refused for what was collected, or else accepted with the events that {@code events} makes. */
    Decision<TravellerEvent> orElse(Supplier<List<TravellerEvent>> events) {
        return any() ? Decision.refused(refusals) : Decision.accepted(events.get());
    }
}
