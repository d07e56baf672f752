package brightseam.session;

import brightseam.kernel.Refusal;
import java.util.Map;
import java.util.TreeMap;

/**
 * A broken rule as it is written down: its code and its evidence as text.
 *
 * @param code the rule's stable name
 * @param evidence by name, sorted
 */
public record Broken(String code, Map<String, String> evidence) {

    /** Sorts the evidence, so that one rule has one written form. */
    public Broken {
        evidence = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(evidence));
    }

    /** {@code refusal} as it is written down. */
    public static Broken of(Refusal refusal) {
        return new Broken(refusal.code(), refusal.evidence());
    }
}
