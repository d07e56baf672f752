package brightseam.evidence;

import brightseam.kernel.TravellerId;
import brightseam.ledger.StreamName;
import brightseam.seal.Hash;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Evidence as a file: one JSON object in canonical form (RFC 8785), so that it has one written form and every byte of
 * it counts. Described by {@code shared/schemas/evidence.schema.json}.
 */
public final class EvidenceForm {

    /** The form's name in the file. */
    public static final String NAME = "brightseam-evidence";
    /** The form's number in the file. */
    public static final long VERSION = 1;
    /** What is read at most, in bytes: some ten thousand entries. */
    public static final int BYTES_MAX = 64 << 20;

    private EvidenceForm() {}

    /** What reading came to. */
    public sealed interface Reading {
        /** The bytes are evidence in the one form that it has. */
        record Read(Evidence evidence) implements Reading {}

        /** The bytes are something else; {@code byteNumber} from 1 tells where that shows. */
        record Unreadable(long byteNumber, String why) implements Reading {}
    }

    /** The file's bytes. */
    public static byte[] write(Evidence evidence) {
        return CanonicalText.of(Map.of(
                "checkpoint", evidence.checkpoint(),
                "form", NAME,
                "heads", evidence.heads().stream().map(head -> Map.of(
                        "consistency", digits(head.consistency()), "note", head.note())).toList(),
                "keys", evidence.keys(),
                "streams", evidence.parts().stream().map(part -> Map.of(
                        "entries", part.items().stream().map(item -> Map.of(
                                "envelope", item.envelope(), "path", digits(item.path()),
                                "position", item.position())).toList(),
                        "stream", part.stream().value())).toList(),
                "traveller", evidence.traveller().value(),
                "version", VERSION)).getBytes(StandardCharsets.UTF_8);
    }

    /** What {@code bytes} say; nothing is checked but their form. */
    public static Reading read(byte[] bytes) {
        if (bytes.length > BYTES_MAX) {
            return new Reading.Unreadable(BYTES_MAX, "longer than " + (BYTES_MAX >> 20) + " MiB");
        }
        String text = "";
        try {
            text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            Evidence evidence = evidence(StrictJson.read(text));
            int differs = Arrays.mismatch(bytes, write(evidence));
            return differs < 0
                    ? new Reading.Read(evidence)
                    : new Reading.Unreadable(differs + 1L, "not in canonical form (RFC 8785)");
        } catch (CharacterCodingException wrong) {
            return new Reading.Unreadable(1, "not UTF-8");
        } catch (NotJson wrong) {
            int before = text.substring(0, Math.min(wrong.at(), text.length()))
                    .getBytes(StandardCharsets.UTF_8).length;
            return new Reading.Unreadable(before + 1L, wrong.getMessage());
        }
    }

    private static Evidence evidence(Json root) throws NotJson {
        Map<String, Json> all = members(root, "checkpoint", "form", "heads", "keys", "streams", "traveller", "version");
        if (!text(all, "form").equals(NAME) || number(all, "version") != VERSION) {
            throw new NotJson(0, "not version " + VERSION + " of " + NAME);
        }
        List<Evidence.Head> heads = new ArrayList<>();
        for (Json head : list(all, "heads")) {
            Map<String, Json> parts = members(head, "consistency", "note");
            heads.add(new Evidence.Head(text(parts, "note"), hashes(parts, "consistency")));
        }
        List<String> keys = new ArrayList<>();
        for (Json key : list(all, "keys")) {
            keys.add(text(key));
        }
        List<Evidence.Part> parts = new ArrayList<>();
        for (Json part : list(all, "streams")) {
            parts.add(part(part));
        }
        return new Evidence(label(TravellerId::new, text(all, "traveller")), text(all, "checkpoint"), heads, keys,
                parts);
    }

    private static Evidence.Part part(Json written) throws NotJson {
        Map<String, Json> all = members(written, "entries", "stream");
        List<Evidence.Item> items = new ArrayList<>();
        for (Json entry : list(all, "entries")) {
            Map<String, Json> parts = members(entry, "envelope", "path", "position");
            items.add(new Evidence.Item(text(parts, "envelope"), number(parts, "position"), hashes(parts, "path")));
        }
        return new Evidence.Part(label(StreamName::new, text(all, "stream")), items);
    }

    private static Map<String, Json> members(Json value, String... names) throws NotJson {
        if (!(value instanceof Json.Members members)) {
            throw new NotJson(0, "an object with " + String.join(", ", names) + " is missing");
        }
        Set<String> differing = new HashSet<>(members.of().keySet());
        List<String> wanted = List.of(names);
        if (!differing.containsAll(wanted)) {
            throw new NotJson(0, "one of " + String.join(", ", names) + " is missing");
        }
        wanted.forEach(differing::remove);
        if (!differing.isEmpty()) {
            throw new NotJson(0, "a name that this form does not have: "
                    + differing.stream().sorted().collect(Collectors.joining(", ")));
        }
        return members.of();
    }

    private static List<Json> list(Map<String, Json> members, String name) throws NotJson {
        if (members.get(name) instanceof Json.Values values) {
            return values.of();
        }
        throw new NotJson(0, name + " is no array");
    }

    private static String text(Map<String, Json> members, String name) throws NotJson {
        return text(members.get(name));
    }

    private static String text(Json value) throws NotJson {
        if (value instanceof Json.Text text) {
            return text.value();
        }
        throw new NotJson(0, "a text is missing");
    }

    private static long number(Map<String, Json> members, String name) throws NotJson {
        if (members.get(name) instanceof Json.Number number && number.written().matches("[1-9]\\d{0,14}")) {
            return Long.parseLong(number.written());
        }
        throw new NotJson(0, name + " is no whole number above 0");
    }

    private static List<Hash> hashes(Map<String, Json> members, String name) throws NotJson {
        List<Hash> hashes = new ArrayList<>();
        for (Json value : list(members, name)) {
            hashes.add(label(Hash::fromHex, text(value)));
        }
        return hashes;
    }

    private static List<String> digits(List<Hash> hashes) {
        return hashes.stream().map(Hash::hex).toList();
    }

    private static <T> T label(Function<String, T> type, String text) throws NotJson {
        try {
            return type.apply(text);
        } catch (IllegalArgumentException wrong) {
            throw new NotJson(0, "not a label or hash of the right form: "
                    + text.substring(0, Math.min(text.length(), 80)).replaceAll("\\p{Cntrl}", "?"));
        }
    }
}
