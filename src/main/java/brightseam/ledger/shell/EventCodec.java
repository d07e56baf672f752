package brightseam.ledger.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.PartNumber;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.SystemId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.cfg.DateTimeFeature;
import tools.jackson.databind.deser.std.StdDeserializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/**
 * Writes a feature's events, which are records, as JSON and reads them back, by an explicit table of type names.
 *
 * <p>Field names are in snake case, labels are plain strings, decimals are strings (RFC 8785 numbers are doubles),
 * times are ISO 8601, durations ISO 8601, absent optionals are left out. A written form is kept for ever: a changed
 * event gets a new type name, and the old name stays readable.
 *
 * @param <E> the feature's event type
 */
public final class EventCodec<E> {

    private static final JsonMapper MAPPER = mapper();

    private final Map<String, Class<? extends E>> classes;
    private final Map<Class<?>, String> names = new HashMap<>();
    private final JsonMapper mapper;

    /** Knows the events of {@code types}, from type name to record class; a class is written under one name only. */
    public EventCodec(Map<String, Class<? extends E>> types) {
        this(types, Map.of(), Optional.empty());
    }

    /**
     * The same, where events hold events of the same table, declared as {@code base}: the inner ones are written with
     * their type name beside them, as {@code {"event": {...}, "type": "..."}}, to any depth.
     */
    public EventCodec(Class<E> base, Map<String, Class<? extends E>> types) {
        this(types, Map.of(), Optional.of(base));
    }

    /**
     * The same, with names that events had in {@code earlier} forms, which the same classes read: a part that the
     * first form lacked is optional. Nothing is written under an earlier name any more.
     */
    public EventCodec(Class<E> base, Map<String, Class<? extends E>> types,
            Map<String, Class<? extends E>> earlier) {
        this(types, earlier, Optional.of(base));
    }

    private EventCodec(Map<String, Class<? extends E>> types, Map<String, Class<? extends E>> earlier,
            Optional<Class<E>> base) {
        Map<String, Class<? extends E>> known = new HashMap<>(earlier);
        types.forEach((name, type) -> {
            if (known.put(name, type) != null) {
                throw new IllegalArgumentException(name + " is an earlier form's name too");
            }
        });
        this.classes = Map.copyOf(known);
        types.forEach((name, type) -> {
            if (names.put(type, name) != null) {
                throw new IllegalArgumentException(type + " has two names");
            }
        });
        this.mapper = base.map(nested -> MAPPER.rebuild()
                .addModule(NestedEvents.module(nested, classes, names)).build()).orElse(MAPPER);
    }

    /** Whether this table has {@code type}. */
    public boolean knows(String type) {
        return classes.containsKey(type);
    }

    /** The record class that is written as {@code type}; empty where this table lacks it. */
    public Optional<Class<? extends E>> classOf(String type) {
        return Optional.ofNullable(classes.get(type));
    }

    /** The written form of {@code event}. */
    public NewEvent write(E event) {
        String name = names.get(event.getClass());
        if (name == null) {
            throw new IllegalArgumentException("no type name for " + event.getClass());
        }
        return new NewEvent(name, mapper.writeValueAsString(event));
    }

    /**
     * The event in {@code entry}.
     *
     * @throws IllegalArgumentException where the table lacks its type
     */
    public E read(Entry entry) {
        Class<? extends E> type = classes.get(entry.type());
        if (type == null) {
            throw new IllegalArgumentException("unknown event type " + entry.type() + " in " + entry.stream());
        }
        return mapper.readValue(entry.json(), type);
    }

    private static JsonMapper mapper() {
        SimpleModule labels = new SimpleModule("labels");
        label(labels, TravellerId.class, TravellerId::new);
        label(labels, BinId.class, BinId::new);
        label(labels, KitId.class, KitId::new);
        label(labels, HeatId.class, HeatId::new);
        label(labels, SessionId.class, SessionId::new);
        label(labels, JointId.class, JointId::parse);
        label(labels, StationId.class, StationId::new);
        label(labels, BadgeId.class, BadgeId::new);
        label(labels, PartNumber.class, PartNumber::new);
        label(labels, SupplyId.class, SupplyId::new);
        label(labels, StepId.class, StepId::new);
        label(labels, SystemId.class, SystemId::new);
        label(labels, SessionId.class, SessionId::new);
        label(labels, JointId.class, JointId::parse);
        label(labels, BigDecimal.class, BigDecimal::new);
        return JsonMapper.builder()
                .addModule(labels)
                .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                .changeDefaultPropertyInclusion(inclusion -> inclusion.withValueInclusion(
                        com.fasterxml.jackson.annotation.JsonInclude.Include.NON_ABSENT))
                .disable(DateTimeFeature.WRITE_DATES_AS_TIMESTAMPS, DateTimeFeature.WRITE_DURATIONS_AS_TIMESTAMPS)
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .build();
    }

    private static <T> void label(SimpleModule module, Class<T> type, Function<String, T> reader) {
        module.addSerializer(type, new LabelWriter<>(type));
        module.addDeserializer(type, new LabelReader<>(type, reader));
        module.addKeySerializer(type, new KeyWriter<>(type));
        module.addKeyDeserializer(type, new KeyReader<>(reader));
    }

    private static String plain(Object label) {
        return label instanceof BigDecimal number ? number.toPlainString() : label.toString();
    }

    private static final class LabelWriter<T> extends StdSerializer<T> {
        LabelWriter(Class<T> type) {
            super(type);
        }

        @Override
        public void serialize(T label, JsonGenerator out, SerializationContext context) {
            out.writeString(plain(label));
        }
    }

    private static final class KeyWriter<T> extends StdSerializer<T> {
        KeyWriter(Class<T> type) {
            super(type);
        }

        @Override
        public void serialize(T label, JsonGenerator out, SerializationContext context) {
            out.writeName(plain(label));
        }
    }

    private static final class KeyReader<T> extends tools.jackson.databind.KeyDeserializer {
        private final Function<String, T> reader;

        KeyReader(Function<String, T> reader) {
            this.reader = reader;
        }

        @Override
        public Object deserializeKey(String key, DeserializationContext context) {
            return reader.apply(key);
        }
    }

    private static final class LabelReader<T> extends StdDeserializer<T> {
        private final transient Function<String, T> reader;

        LabelReader(Class<T> type, Function<String, T> reader) {
            super(type);
            this.reader = reader;
        }

        @Override
        public T deserialize(JsonParser in, DeserializationContext context) {
            return reader.apply(in.getString());
        }
    }
}
