package brightseam.procedure.shell;

import brightseam.kernel.ContactKind;
import brightseam.procedure.BinClass;
import brightseam.procedure.DurationText;
import brightseam.procedure.Mix;
import brightseam.procedure.SignedBy;
import brightseam.procedure.StepKind;
import brightseam.procedure.Surface;
import java.time.Duration;
import java.util.Locale;
import java.util.function.Function;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.deser.std.StdDeserializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/** Turns checked trees into records: snake case for components, hyphens for enum names, texts for durations. */
final class TreeMapper {

    private static final JsonMapper MAPPER = mapper();

    private TreeMapper() {}

    /** The record of class {@code type} that {@code tree} writes; keys that it lacks are passed over. */
    static <T> T read(JsonNode tree, Class<T> type) {
        return MAPPER.treeToValue(tree, type);
    }

    private static JsonMapper mapper() {
        SimpleModule words = new SimpleModule("words");
        words.addDeserializer(Duration.class, new WordReader<>(Duration.class, DurationText::parse));
        words.addDeserializer(StepKind.class, new WordReader<>(StepKind.class, word -> StepKind.valueOf(name(word))));
        words.addDeserializer(BinClass.class, new WordReader<>(BinClass.class, word -> BinClass.valueOf(name(word))));
        words.addDeserializer(SignedBy.class, new WordReader<>(SignedBy.class, word -> SignedBy.valueOf(name(word))));
        words.addDeserializer(ContactKind.class,
                new WordReader<>(ContactKind.class, word -> ContactKind.valueOf(name(word))));
        words.addDeserializer(Surface.class, new WordReader<>(Surface.class, word -> Surface.valueOf(name(word))));
        words.addDeserializer(Mix.class, new WordReader<>(Mix.class, word -> Mix.valueOf(name(word))));
        return JsonMapper.builder()
                .addModule(words)
                .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .build();
    }

    private static String name(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    private static final class WordReader<T> extends StdDeserializer<T> {
        private final transient Function<String, T> reader;

        WordReader(Class<T> type, Function<String, T> reader) {
            super(type);
            this.reader = reader;
        }

        @Override
        public T deserialize(JsonParser in, DeserializationContext context) {
            return reader.apply(in.getString());
        }
    }
}
