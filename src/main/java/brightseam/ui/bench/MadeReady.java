package brightseam.ui.bench;

import brightseam.kernel.ContactKind;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Use;
import brightseam.supply.Fitness;
import brightseam.supply.Supply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a person has made ready for the step that begins next.
 *
 * @param confirmed whether the cautions are read and gloves that nobody scans are on
 * @param supplies what was scanned, in that order; a later one of the same type takes the place of an earlier one
 */
record MadeReady(boolean confirmed, List<Supply> supplies) {

    /** Nothing is ready. */
    static final MadeReady NOTHING = new MadeReady(false, List.of());

    MadeReady {
        supplies = List.copyOf(supplies);
    }

    MadeReady confirm() {
        return new MadeReady(true, supplies);
    }

    MadeReady with(Supply supply) {
        List<Supply> next = new ArrayList<>(supplies);
        next.removeIf(other -> other.type().equals(supply.type()));
        next.add(supply);
        return new MadeReady(confirmed, next);
    }

    /** What was scanned as {@code use}. */
    Optional<Supply> scanned(Use use) {
        return supplies.stream().filter(supply -> Fitness.use(supply, List.of(use)).isPresent()).findFirst();
    }

    /** Those of {@code asked} that are not scanned yet. */
    List<Use> missing(List<Use> asked) {
        return asked.stream().filter(use -> scanned(use).isEmpty()).toList();
    }

    /** Whether gloves are on, by touch or by scan. */
    boolean glovesOn() {
        return confirmed || supplies.stream().anyMatch(supply -> supply.kind() == ContactKind.GLOVES);
    }

    /** The labels of what was scanned. */
    List<SupplyId> labels() {
        return supplies.stream().map(Supply::id).toList();
    }
}
