package brightseam.procedure.shell;

import brightseam.procedure.shell.Fault.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * A YAML text as a JSON tree that knows where each value and each key stands.
 *
 * @param root the tree
 * @param values position of each value by JSON pointer; the root's pointer is empty
 * @param keys position of each key by the pointer of its value
 * @param duplicates keys that stand twice in one mapping
 */
record YamlTree(JsonNode root, Map<String, Place> values, Map<String, Place> keys, List<Fault> duplicates) {

    static YamlTree empty() {
        return new YamlTree(null, new HashMap<>(), new HashMap<>(), new ArrayList<>());
    }

    YamlTree with(JsonNode node) {
        return new YamlTree(node, values, keys, duplicates);
    }

    /** The position of the value at {@code pointer}, or of the nearest value around it. */
    Place valueAt(String pointer) {
        for (String at = pointer; !at.isEmpty(); at = at.substring(0, at.lastIndexOf('/'))) {
            if (values.containsKey(at)) {
                return values.get(at);
            }
        }
        return values.getOrDefault("", Place.START);
    }

    /** The position of the key whose value is at {@code pointer}. */
    Place keyAt(String pointer) {
        return keys.getOrDefault(pointer, valueAt(pointer));
    }

    /** {@code pointer} and one more {@code token}, escaped as RFC 6901 asks. */
    static String below(String pointer, String token) {
        return pointer + "/" + token.replace("~", "~0").replace("/", "~1");
    }
}
