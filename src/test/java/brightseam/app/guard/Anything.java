package brightseam.app.guard;

import brightseam.people.PersonRefusal;
import java.lang.reflect.Array;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Makes a value of any type that a service asks for, out of texts and numbers; what is given is taken as it is. */
final class Anything {

    private static final List<String> TEXTS = List.of(
            "A", "Z-9", "a-word", "B-9", "G-9", "0".repeat(64), "words of it");
    private static final List<BigDecimal> NUMBERS = List.of(
            new BigDecimal("0.5"), BigDecimal.ONE, BigDecimal.TEN, new BigDecimal("100"));
    private static final int TRIES_MAX = 3_000;

    private final Map<Class<?>, Object> given;
    private final Random chance = new Random(7);

    /** @param given what to take for these types */
    Anything(Map<Class<?>, Object> given) {
        this.given = Map.copyOf(given);
    }

    /**
     * A value of {@code type}; where that is sealed or generic, the first that can be made.
     *
     * @throws IllegalStateException where none was found
     */
    Object of(Type type) {
        return switch (type) {
            case ParameterizedType several ->
                generic((Class<?>) several.getRawType(), several.getActualTypeArguments());
            case WildcardType wild -> of(wild.getUpperBounds()[0]);
            case Class<?> plain -> given.containsKey(plain) ? given.get(plain) : plain(plain);
            default -> throw new IllegalStateException("no value of " + type);
        };
    }

    private Object generic(Class<?> raw, Type[] of) {
        if (raw == Optional.class) {
            return chance.nextBoolean() ? Optional.empty() : Optional.of(of(of[0]));
        }
        if (raw == Map.class || Map.class.isAssignableFrom(raw)) {
            return new TreeMap<>(Map.of(of(of[0]), of(of[1])));
        }
        if (raw == List.class || raw == Collection.class) {
            return chance.nextBoolean() ? List.of(of(of[0])) : List.of(of(of[0]), of(of[0]));
        }
        if (Set.class.isAssignableFrom(raw)) {
            Object one = of(of[0]);
            return raw == Set.class ? Set.of(one) : new TreeSet<>(Set.of(one));
        }
        return raw.isInterface() && !raw.isSealed() ? null : plain(raw);
    }

    private Object plain(Class<?> type) {
        if (type.isEnum()) {
            return type.getEnumConstants()[chance.nextInt(type.getEnumConstants().length)];
        }
        if (type.isSealed()) {
            Class<?>[] all = type.getPermittedSubclasses();
            return of(all[chance.nextInt(all.length)]);
        }
        if (type.isArray()) {
            return Array.newInstance(type.getComponentType(), 1);
        }
        return type.isRecord() ? record(type) : simple(type);
    }

    private Object simple(Class<?> type) {
        return switch (type.getName()) {
            case "java.lang.String" -> TEXTS.get(chance.nextInt(TEXTS.size()));
            case "boolean", "java.lang.Boolean" -> true;
            case "int", "java.lang.Integer" -> 1 + chance.nextInt(3);
            case "long", "java.lang.Long" -> 1L;
            case "double", "java.lang.Double" -> 1.0 + chance.nextInt(3);
            case "java.math.BigDecimal" -> NUMBERS.get(chance.nextInt(NUMBERS.size()));
            case "java.time.Duration" -> Duration.ofSeconds(61);
            case "java.time.Instant" -> Instant.EPOCH;
            case "java.time.LocalDate" -> LocalDate.EPOCH;
            case "brightseam.kernel.Refusal" -> new PersonRefusal.ShopAlreadyOpen();
            default -> throw new IllegalStateException("no value of " + type);
        };
    }

    private Object record(Class<?> type) {
        RecordComponent[] parts = type.getRecordComponents();
        Throwable last = null;
        for (int tries = 0; tries < TRIES_MAX; tries++) {
            try {
                Constructor<?> canonical = type.getDeclaredConstructor(
                        Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new));
                canonical.setAccessible(true);
                return canonical.newInstance(
                        Arrays.stream(parts).map(part -> of(part.getGenericType())).toArray());
            } catch (InvocationTargetException refused) {
                last = refused.getCause();
            } catch (ReflectiveOperationException impossible) {
                throw new IllegalStateException(impossible);
            }
        }
        throw new IllegalStateException("no " + type, last);
    }
}
