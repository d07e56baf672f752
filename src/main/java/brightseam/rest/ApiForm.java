package brightseam.rest;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The description of the interface, and what does not fit one of its schemas. */
final class ApiForm {

    static final String FILE = "/rest/openapi.yaml";
    private static final int FAULTS_MAX = 5;
    private static final int SHOWN_LENGTH_MAX = 60;
    private static final JsonMapper MAPPER = new JsonMapper();

    private final String text;
    private final JsonNode root;

    ApiForm() {
        try (InputStream in = ApiForm.class.getResourceAsStream(FILE)) {
            this.text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        this.root = MAPPER.valueToTree(
                new Yaml(new SafeConstructor(new LoaderOptions())).<Map<String, Object>>load(text));
    }

    /** The description as it is served. */
    String text() {
        return text;
    }

    /** The description as a tree. */
    JsonNode root() {
        return root;
    }

    /** The schema called {@code name}, those that it refers to with it. */
    Schema schema(String name) {
        ObjectNode whole = MAPPER.createObjectNode().put("$ref", "#/$defs/" + name);
        whole.set("$defs", MAPPER.readTree(root.path("components").path("schemas").toString()
                .replace("#/components/schemas/", "#/$defs/")));
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(whole);
    }

    /** What in {@code value} does not fit {@code schema}, at most five sentences; empty where all fits. */
    static List<String> faults(Schema schema, JsonNode value) {
        return schema.validate(value).stream().limit(FAULTS_MAX).map(ApiForm::sentence).toList();
    }

    private static String sentence(Error error) {
        String at = error.getInstanceLocation().toString().replaceFirst("^/", "").replace('/', '.');
        String said = error.getMessage();
        String shown = said.length() > SHOWN_LENGTH_MAX * 2 ? said.substring(0, SHOWN_LENGTH_MAX * 2) + "…" : said;
        return (at.isEmpty() ? "" : at + ": ") + shown + ".";
    }
}
