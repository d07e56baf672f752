package brightseam.ledger.shell;

import java.io.IOException;
import java.math.BigDecimal;
import org.erdtman.jcs.JsonCanonicalizer;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;

/**
 * The canonical form of RFC 8785, for content that it does not alter.
 *
 * <p>RFC 8785 numbers are doubles. A number that a double cannot hold as written is refused here rather than rounded:
 * certificates and readings are recorded as strings.
 */
final class CanonicalJson {

    private static final long INTEGER_MAX = (1L << 53) - 1;
    private static final JsonFactory STRICT =
            JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

    private CanonicalJson() {}

    /**
     * The canonical form of the JSON object in {@code json}.
     *
     * @throws IllegalArgumentException where it is not one JSON object, has a name twice, or a number would be rounded
     */
    static String object(String json) {
        try (JsonParser in = STRICT.createParser(ObjectReadContext.empty(), json)) {
            if (in.nextToken() != JsonToken.START_OBJECT) {
                throw new IllegalArgumentException("an event is one JSON object");
            }
            int depth = 1;
            while (depth > 0) {
                JsonToken token = in.nextToken();
                depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
                refuseRounding(in, token);
            }
            return any(json);
        } catch (JacksonException wrong) {
            throw new IllegalArgumentException("not JSON: " + wrong.getOriginalMessage(), wrong);
        }
    }

    /** The canonical form of any object or array, numbers rounded to doubles as RFC 8785 says. */
    static String any(String json) {
        try {
            return new JsonCanonicalizer(json).getEncodedString();
        } catch (IOException wrong) {
            throw new IllegalArgumentException("not JSON: " + wrong.getMessage(), wrong);
        }
    }

    private static void refuseRounding(JsonParser in, JsonToken token) {
        if (token == JsonToken.VALUE_NUMBER_INT || token == JsonToken.VALUE_NUMBER_FLOAT) {
            BigDecimal exact = new BigDecimal(in.getString());
            double held = exact.doubleValue();
            boolean small = exact.abs().compareTo(BigDecimal.valueOf(INTEGER_MAX)) <= 0;
            if (!small || new BigDecimal(Double.toString(held)).compareTo(exact) != 0) {
                throw new IllegalArgumentException("would be rounded, write it as a string: " + in.getString());
            }
        }
    }
}
