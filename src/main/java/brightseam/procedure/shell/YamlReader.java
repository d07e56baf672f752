package brightseam.procedure.shell;

import brightseam.procedure.shell.Fault.Place;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.Iterator;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.reader.ReaderException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads the plain part of YAML: mappings, lists and scalars of one document. Tags, anchors, aliases and merge keys are
 * refused, so a text cannot name a class or grow when read; nesting is limited. Plain scalars are typed by the JSON
 * rules of YAML 1.2, so that {@code no}, {@code 1:30} and {@code 010} stay texts.
 */
final class YamlReader {

    private static final int NESTING_MAX = 12;
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]{0,8})(\\.[0-9]{1,8})?");
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Iterator<Event> events;
    private final YamlTree tree = YamlTree.empty();
    private Event current;

    private YamlReader(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(FileText.SIZE_MAX_BYTES);
        this.events = new Yaml(options).parse(new StringReader(text)).iterator();
    }

    /** The tree of {@code text}. */
    static YamlTree read(String text) throws FaultyText {
        String withoutMark = text.startsWith("\uFEFF") ? text.substring(1) : text;
        try {
            return new YamlReader(withoutMark).document();
        } catch (MarkedYAMLException broken) {
            Mark mark = broken.getProblemMark() == null ? broken.getContextMark() : broken.getProblemMark();
            throw new FaultyText(place(mark), "broken YAML, " + broken.getProblem(), "well-formed YAML");
        } catch (ReaderException broken) {
            throw new FaultyText(FileText.place(withoutMark, broken.getPosition()),
                    "a character that YAML does not allow", "printable characters");
        } catch (YAMLException broken) {
            throw new FaultyText(Place.START, "broken YAML, " + broken.getMessage(), "well-formed YAML");
        }
    }

    private YamlTree document() throws FaultyText {
        next();
        next();
        if (current.is(Event.ID.StreamEnd)) {
            throw new FaultyText(Place.START, "an empty file", "a procedure");
        }
        next();
        JsonNode root = node("", 0);
        next();
        next();
        if (!current.is(Event.ID.StreamEnd)) {
            throw new FaultyText(place(current.getStartMark()), "a second document", "one document in a file");
        }
        return tree.with(root);
    }

    private JsonNode node(String pointer, int depth) throws FaultyText {
        Place place = place(current.getStartMark());
        refuseWhatIsNotPlain(place);
        if (depth > NESTING_MAX) {
            throw new FaultyText(place, "more than " + NESTING_MAX + " levels of nesting", "a flatter file");
        }
        tree.values().put(pointer, place);
        if (current instanceof ScalarEvent scalar) {
            return scalar.isPlain() ? plain(scalar.getValue()) : NODES.stringNode(scalar.getValue());
        }
        return current instanceof SequenceStartEvent ? list(pointer, depth) : mapping(pointer, depth);
    }

    private ArrayNode list(String pointer, int depth) throws FaultyText {
        ArrayNode list = NODES.arrayNode();
        for (next(); !current.is(Event.ID.SequenceEnd); next()) {
            list.add(node(pointer + "/" + list.size(), depth + 1));
        }
        return list;
    }

    private ObjectNode mapping(String pointer, int depth) throws FaultyText {
        ObjectNode mapping = NODES.objectNode();
        for (next(); !current.is(Event.ID.MappingEnd); next()) {
            Place place = place(current.getStartMark());
            refuseWhatIsNotPlain(place);
            if (!(current instanceof ScalarEvent key)) {
                throw new FaultyText(place, "a key that is a list or a mapping", "a word as key");
            }
            String name = key.getValue();
            if (key.isPlain() && name.equals("<<")) {
                throw new FaultyText(place, "a merge key", "every part written out");
            }
            String below = YamlTree.below(pointer, name);
            boolean second = mapping.has(name);
            if (second) {
                tree.duplicates().add(new Fault(place, "key " + name + " for the second time, first in line "
                        + tree.keys().get(below).line(), "each key once"));
            } else {
                tree.keys().put(below, place);
            }
            next();
            JsonNode value = node(below, depth + 1);
            if (!second) {
                mapping.set(name, value);
            }
        }
        return mapping;
    }

    private void refuseWhatIsNotPlain(Place place) throws FaultyText {
        if (current instanceof AliasEvent) {
            throw new FaultyText(place, "an alias", "every part written out");
        }
        if (current instanceof NodeEvent node && node.getAnchor() != null) {
            throw new FaultyText(place, "an anchor", "every part written out");
        }
        String tag = switch (current) {
            case ScalarEvent scalar -> scalar.getTag();
            case CollectionStartEvent collection -> collection.getTag();
            default -> null;
        };
        if (tag != null) {
            throw new FaultyText(place, "the tag " + tag, "no tags");
        }
    }

    private static JsonNode plain(String value) {
        return switch (value) {
            case "", "~", "null" -> NODES.nullNode();
            case "true" -> NODES.booleanNode(true);
            case "false" -> NODES.booleanNode(false);
            default -> NUMBER.matcher(value).matches() ? number(value) : NODES.stringNode(value);
        };
    }

    private static JsonNode number(String value) {
        return value.contains(".")
                ? NODES.numberNode(new BigDecimal(value))
                : NODES.numberNode(Integer.parseInt(value));
    }

    private void next() {
        current = events.next();
    }

    private static Place place(Mark mark) {
        return new Place(mark.getLine() + 1, mark.getColumn() + 1);
    }
}
