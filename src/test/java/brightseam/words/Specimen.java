package brightseam.words;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes a value of any record out of values that its components' types admit. */
final class Specimen {

    /** Texts in the forms that identities, slugs and hashes ask for; the first that a record admits is used. */
    private static final List<String> TEXTS = List.of("A-1", "a-word", "a", "0".repeat(64));

    private Specimen() {}

    /**
     * One of {@code type}.
     *
     * @throws IllegalStateException where a component's type is not known here, or no text is admitted
     */
    static Object of(Class<?> type) {
        for (String text : TEXTS) {
            Optional<Object> made = made(type, text);
            if (made.isPresent()) {
                return made.get();
            }
        }
        throw new IllegalStateException(type + " admits none of " + TEXTS);
    }

    private static Optional<Object> made(Class<?> type, String text) {
        RecordComponent[] components = type.getRecordComponents();
        Object[] values = Arrays.stream(components)
                .map(component -> value(component.getGenericType(), text)).toArray();
        try {
            Constructor<?> canonical = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            canonical.setAccessible(true);
            return Optional.of(canonical.newInstance(values));
        } catch (ReflectiveOperationException refused) {
            return Optional.empty();
        }
    }

    private static Object value(Type type, String text) {
        if (type instanceof ParameterizedType generic) {
            Object element = value(generic.getActualTypeArguments()[0], text);
            if (generic.getRawType() == List.class) {
                return List.of(element);
            }
            return generic.getRawType() == Set.class ? Set.of(element) : Optional.of(element);
        }
        Class<?> plain = (Class<?>) type;
        if (plain == String.class) {
            return text;
        }
        if (plain == int.class || plain == Integer.class) {
            return 1;
        }
        if (plain == long.class) {
            return 1L;
        }
        if (plain == BigDecimal.class) {
            return BigDecimal.ONE;
        }
        if (plain == Duration.class) {
            return Duration.ofSeconds(61);
        }
        if (plain == LocalDate.class) {
            return LocalDate.EPOCH;
        }
        if (plain == Instant.class) {
            return Instant.EPOCH;
        }
        return plain.isEnum() ? plain.getEnumConstants()[0] : of(plain);
    }
}
