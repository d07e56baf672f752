package brightseam.evidence;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A JSON value (RFC 8259) as it was read. */
public sealed interface Json {

    /** Members in the order in which they stand. */
    record Members(Map<String, Json> of) implements Json {}

    /** Values in order. */
    record Values(List<Json> of) implements Json {}

    /** Text. */
    record Text(String value) implements Json {}

    /** A number as it is written. */
    record Number(String written) implements Json {}

    /** {@code true} or {@code false}. */
    record Truth(boolean value) implements Json {}

    /** {@code null}. */
    record Nothing() implements Json {}

    /** The member {@code name}; empty where this has none. */
    default Optional<Json> member(String name) {
        return this instanceof Members members ? Optional.ofNullable(members.of().get(name)) : Optional.empty();
    }

    /** The member at the end of {@code path}; empty where there is none. */
    default Optional<Json> at(String... path) {
        Optional<Json> here = Optional.of(this);
        for (String name : path) {
            here = here.flatMap(value -> value.member(name));
        }
        return here;
    }

    /** The text at the end of {@code path}; empty where there is none. */
    default Optional<String> text(String... path) {
        return at(path).flatMap(value -> value instanceof Text text ? Optional.of(text.value()) : Optional.empty());
    }

    /** The values at the end of {@code path}; none where there are none. */
    default List<Json> values(String... path) {
        return at(path).map(value -> value instanceof Values values ? values.of() : List.<Json>of()).orElse(List.of());
    }

    /** Text as it is, a number as it is written; empty for anything else. */
    default Optional<String> plain() {
        return switch (this) {
            case Text text -> Optional.of(text.value());
            case Number number -> Optional.of(number.written());
            case Truth truth -> Optional.of(truth.value() ? "yes" : "no");
            case Members members -> Optional.empty();
            case Values values -> Optional.empty();
            case Nothing nothing -> Optional.empty();
        };
    }
}
