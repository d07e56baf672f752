package brightseam.kernel;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * One broken rule, as a value: which rule and the evidence. Words for people are made elsewhere.
 *
 * <p>Implementations are records; their components are the evidence.
 */
public interface Refusal {

    /** The rule's stable name, lower case with hyphens; written into the ledger, so never changed. */
    String code();

    /**
     * The evidence by component name, as text, sorted by name: moments by their wall time in ISO 8601, durations in
     * ISO 8601, lists joined by commas, what is absent as empty text.
     */
    default Map<String, String> evidence() {
        Map<String, String> evidence = new TreeMap<>();
        for (RecordComponent component : getClass().getRecordComponents()) {
            evidence.put(component.getName(), text(read(component)));
        }
        return evidence;
    }

    private static String text(Object value) {
        return switch (value) {
            case null -> "";
            case Moment moment -> moment.wall().toString();
            case Optional<?> optional -> optional.map(Refusal::text).orElse("");
            case Collection<?> several -> several.stream().map(Refusal::text).collect(Collectors.joining(", "));
            case BigDecimal number -> number.toPlainString();
            default -> value.toString();
        };
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
