package brightseam.ledger.shell;

import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.BeanDescription;
import tools.jackson.databind.BeanProperty;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationConfig;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.deser.std.StdDeserializer;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.ValueSerializerModifier;

/**
 * Writes events that lie inside other events with their type name beside them. The outermost event stays bare: its
 * type name stands in the entry.
 */
final class NestedEvents {

    private static final String TYPE = "type";
    private static final String EVENT = "event";

    private NestedEvents() {}

    static <E> SimpleModule module(
            Class<E> base, Map<String, Class<? extends E>> classes, Map<Class<?>, String> names) {
        SimpleModule module = new SimpleModule("nested-events");
        module.addDeserializer(base, new Reader<>(base, classes));
        module.setSerializerModifier(new Wrapping(names));
        return module;
    }

    private static final class Wrapping extends ValueSerializerModifier {
        private final transient Map<Class<?>, String> names;

        Wrapping(Map<Class<?>, String> names) {
            this.names = names;
        }

        @Override
        @SuppressWarnings("unchecked")
        public ValueSerializer<?> modifySerializer(
                SerializationConfig config, BeanDescription.Supplier bean, ValueSerializer<?> bare) {
            String name = names.get(bean.getBeanClass());
            return name == null ? bare : new Writer(name, (ValueSerializer<Object>) bare);
        }
    }

    private static final class Writer extends ValueSerializer<Object> {
        private final String name;
        private final ValueSerializer<Object> bare;

        Writer(String name, ValueSerializer<Object> bare) {
            this.name = name;
            this.bare = bare;
        }

        @Override
        public void resolve(SerializationContext context) {
            bare.resolve(context);
        }

        @Override
        @SuppressWarnings("unchecked")
        public ValueSerializer<?> createContextual(SerializationContext context, BeanProperty property) {
            return new Writer(name, (ValueSerializer<Object>) bare.createContextual(context, property));
        }

        @Override
        public void serialize(Object event, JsonGenerator out, SerializationContext context) {
            if (out.streamWriteContext().inRoot()) {
                bare.serialize(event, out, context);
                return;
            }
            out.writeStartObject();
            out.writeName(EVENT);
            bare.serialize(event, out, context);
            out.writeStringProperty(TYPE, name);
            out.writeEndObject();
        }
    }

    private static final class Reader<E> extends StdDeserializer<E> {
        private final transient Map<String, Class<? extends E>> classes;

        Reader(Class<E> base, Map<String, Class<? extends E>> classes) {
            super(base);
            this.classes = classes;
        }

        @Override
        public E deserialize(JsonParser in, DeserializationContext context) {
            JsonNode nested = context.readTree(in);
            String name = nested.path(TYPE).asString("");
            Class<? extends E> type = classes.get(name);
            if (type == null || nested.size() != 2 || !nested.path(EVENT).isObject()) {
                return context.reportInputMismatch(this, "no nested event of a known type: '%s'", name);
            }
            return context.readTreeAsValue(nested.get(EVENT), type);
        }
    }
}
