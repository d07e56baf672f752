package brightseam.kernel;

import java.lang.reflect.RecordComponent;
import java.util.Map;
import java.util.TreeMap;

/**
 * One broken rule, as a value: which rule and the evidence. Words for people are made elsewhere.
 *
 * <p>Implementations are records; their components are the evidence.
 */
public interface Refusal {

    /** The rule's stable name, lower case with hyphens; written into the ledger, so never changed. */
    String code();

    /** The evidence by component name, as text, sorted by name. */
    default Map<String, String> evidence() {
        Map<String, String> evidence = new TreeMap<>();
        for (RecordComponent component : getClass().getRecordComponents()) {
            evidence.put(component.getName(), String.valueOf(read(component)));
        }
        return evidence;
    }

    private Object read(RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(this);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("a record's accessor always answers", impossible);
        }
    }
}
