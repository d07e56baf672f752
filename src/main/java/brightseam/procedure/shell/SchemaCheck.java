package brightseam.procedure.shell;

import brightseam.procedure.shell.Fault.Place;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Checks trees against one of our JSON Schemas (draft 2020-12) and says what is wrong in our own words; what was
 * expected is the {@code description} beside the schema's keyword. Nothing is fetched: schemas refer to each other.
 */
final class SchemaCheck {

    private static final String BASE = "https://brightseam.invalid/schemas/";
    private static final int SHOWN_LENGTH_MAX = 40;

    private final Map<String, JsonNode> documents;
    private final Schema schema;

    /** Checks against {@code shared/schemas/<name>.schema.json}. */
    SchemaCheck(String name) {
        JsonMapper mapper = new JsonMapper();
        String iri = BASE + name + ".schema.json";
        Map<String, String> texts = Map.of(
                iri, SharedFile.text("schemas/" + name + ".schema.json"),
                BASE + "source.schema.json", SharedFile.text("schemas/source.schema.json"));
        this.documents = new LinkedHashMap<>();
        texts.forEach((at, text) -> documents.put(at, mapper.readTree(text)));
        this.schema = SchemaRegistry.withDefaultDialect(
                        SpecificationVersion.DRAFT_2020_12, registry -> registry.schemas(texts))
                .getSchema(SchemaLocation.of(iri));
    }

    /** What breaks the schema, by position; one fault for each place and kind. */
    List<Fault> check(YamlTree tree) {
        List<Fault> faults = new ArrayList<>();
        for (Error error : schema.validate(tree.root())) {
            faults.add(fault(tree, error));
        }
        return faults;
    }

    private Fault fault(YamlTree tree, Error error) {
        String at = error.getInstanceLocation().toString();
        JsonNode rule = around(error.getSchemaLocation().toString());
        Place value = tree.valueAt(at);
        return switch (error.getKeyword()) {
            case "required" -> new Fault(value, "no " + error.getProperty(),
                    error.getProperty() + ": " + described(rule.path("properties").path(error.getProperty())));
            case "additionalProperties" -> new Fault(tree.keyAt(YamlTree.below(at, error.getProperty())),
                    "unknown key " + error.getProperty(), "one of "
                            + String.join(", ", rule.path("properties").propertyNames()));
            case "enum" -> new Fault(value, shown(error.getInstanceNode()), described(rule) + ": one of "
                    + String.join(", ", rule.path("enum").valueStream().map(JsonNode::asString).toList()));
            case "uniqueItems" -> new Fault(value, "the same item twice", "each item once");
            case "minLength", "maxLength" -> new Fault(value,
                    "a text of " + error.getInstanceNode().asString().length() + " characters", described(rule));
            default -> new Fault(value, shown(error.getInstanceNode()), described(rule));
        };
    }

    /** The part of a schema that holds the keyword at {@code location}. */
    private JsonNode around(String location) {
        String[] parts = location.split("#", 2);
        return documents.get(parts[0]).at(parts[1].substring(0, parts[1].lastIndexOf('/')));
    }

    private String described(JsonNode rule) {
        JsonNode target = rule;
        if (rule.has("$ref")) {
            String ref = rule.path("$ref").asString();
            target = ref.startsWith("#")
                    ? documents.values().stream().map(document -> document.at(ref.substring(1)))
                            .filter(found -> !found.isMissingNode()).findFirst().orElseThrow()
                    : documents.get(BASE + ref);
        }
        return target.path("description").asString();
    }

    private static String shown(JsonNode node) {
        return switch (node.getNodeType()) {
            case OBJECT -> node.isEmpty() ? "an empty mapping" : "a mapping";
            case ARRAY -> node.isEmpty() ? "an empty list" : "a list";
            case NULL, MISSING -> "nothing";
            case STRING -> "\"" + cut(node.asString()) + "\"";
            case NUMBER -> "the number " + cut(node.asString());
            case BOOLEAN, BINARY, POJO -> cut(node.asString());
        };
    }

    private static String cut(String text) {
        return text.length() <= SHOWN_LENGTH_MAX ? text : text.substring(0, SHOWN_LENGTH_MAX) + "…";
    }
}
