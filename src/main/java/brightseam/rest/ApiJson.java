package brightseam.rest;

import brightseam.ledger.Chain;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.erdtman.jcs.JsonCanonicalizer;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.cfg.DateTimeFeature;
import tools.jackson.databind.json.JsonMapper;

/** JSON of the interface: names with underscores, times in ISO 8601, absent values left out. */
final class ApiJson {

    /** The longest request, in bytes: 200 lines of a parts list take some 60,000. */
    static final int BYTES_MAX = 256 * 1024;
    /** The deepest request; a release has three levels. */
    private static final int DEPTH_MAX = 12;
    private static final int TEXT_LENGTH_MAX = 2_000;
    private static final int NUMBER_LENGTH_MAX = 40;
    private static final int NAME_LENGTH_MAX = 100;
    private static final int SHOWN_MAX = 200;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEPTH_MAX)
                            .maxDocumentLength(BYTES_MAX).maxStringLength(TEXT_LENGTH_MAX)
                            .maxNumberLength(NUMBER_LENGTH_MAX).maxNameLength(NAME_LENGTH_MAX).build())
                    .build())
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .changeDefaultPropertyInclusion(inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_ABSENT))
            .disable(DateTimeFeature.WRITE_DATES_AS_TIMESTAMPS, DateTimeFeature.WRITE_DURATIONS_AS_TIMESTAMPS)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private ApiJson() {}

    static byte[] write(Object value) {
        return MAPPER.writeValueAsBytes(value);
    }

    /**
     * Reads one JSON object.
     *
     * @throws Problem.Thrown where it is none: broken, too deep, a name twice, something behind it
     */
    static JsonNode read(byte[] body) {
        JsonNode root;
        try {
            root = MAPPER.readTree(body);
        } catch (JacksonException broken) {
            String why = broken.getOriginalMessage().replaceAll("\\s*[(:]?\\s*`?Stream(Read|Write)\\w+.*", "");
            throw new Problem.Thrown(Problem.malformed(List.of("This is not JSON that is read here: "
                    + why.substring(0, Math.min(SHOWN_MAX, why.length())) + ".")));
        }
        if (root == null || !root.isObject()) {
            throw new Problem.Thrown(Problem.malformed(List.of("A JSON object is expected.")));
        }
        return root;
    }

    /** SHA-256 of the canonical form (RFC 8785) of {@code kit} and {@code root}, 64 hexadecimal digits. */
    static String contentSha256(String kit, JsonNode root) {
        try {
            return Chain.sha256((kit + "\n" + new JsonCanonicalizer(MAPPER.writeValueAsString(root))
                    .getEncodedString()).getBytes(StandardCharsets.UTF_8));
        } catch (IOException impossible) {
            throw new IllegalStateException("it was JSON when it was read", impossible);
        }
    }
}
