package brightseam.scan;

import brightseam.kernel.Refusal;
import java.util.Set;
import java.util.TreeSet;

/**
 * One of our labels, but not of a kind that can be used now.
 *
 * @param expected the kinds that can
 * @param found the kind that it is
 * @param id its identity
 */
public record WrongKindOfLabel(Set<LabelKind> expected, LabelKind found, String id) implements Refusal {

    /** Sorts the kinds, so that the evidence always reads the same. */
    public WrongKindOfLabel {
        expected = new TreeSet<>(expected);
    }

    @Override
    public String code() {
        return "wrong-kind-of-label";
    }
}
