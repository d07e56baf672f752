package brightseam.scan;

import brightseam.kernel.Refusal;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What a screen can use right now.
 *
 * @param kinds of our own labels
 * @param supplierLabels whether a supplier's label or a plain code will do
 */
public record Expected(Set<LabelKind> kinds, boolean supplierLabels) {

    /** Copies the set. */
    public Expected {
        kinds = Set.copyOf(kinds);
    }

    /** Our own labels of these kinds and nothing else. */
    public static Expected only(LabelKind first, LabelKind... others) {
        return new Expected(EnumSet.of(first, others), false);
    }

    /** These kinds, and supplier's labels and plain codes too. */
    public Expected orSupplierLabel() {
        return new Expected(kinds, true);
    }

    /** Why {@code reading} cannot be used; empty where it can. Whether it is the right bin or heat comes later. */
    public Optional<Refusal> refuses(ScanReading reading) {
        return switch (reading) {
            case OwnLabel own -> kinds.contains(own.kind())
                    ? Optional.empty() : Optional.of(new WrongKindOfLabel(kinds, own.kind(), own.id()));
            case SupplierLabel label -> supplierLabels
                    ? Optional.empty() : Optional.of(new NotOurLabel(label.fields().getFirst().value()));
            case PlainCode code -> supplierLabels ? Optional.empty() : Optional.of(new NotOurLabel(code.text()));
            case Unreadable unreadable -> Optional.of(new LabelDamaged(unreadable.reason()));
        };
    }
}
