package brightseam.evidence;

import brightseam.ledger.StreamName;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Which streams a record leans on, by the labels in it. The same rule chooses for a file and looks what it lacks. */
public final class Leanings {

    /** Members whose text is the label of something with a stream of its own, and its family. */
    private static final Map<String, List<String>> FAMILIES = Map.of(
            "kit", List.of("kit"),
            "heat", List.of("heat"),
            "joint", List.of("joint"),
            "session", List.of("session"),
            "parent", List.of("traveller"),
            "chamber", List.of("chamber"),
            "meter", List.of("meter", "supply"),
            "oxygen_meter", List.of("meter", "supply"),
            "moisture_meter", List.of("meter", "supply"));

    private final Set<Thing> found = new LinkedHashSet<>();

    private Leanings() {}

    /**
     * Something that a record names.
     *
     * @param streams of which one or more may exist: a meter has one as a thing and one as a device
     */
    public record Thing(String label, List<StreamName> streams) {

        /** Copies the list. */
        public Thing {
            streams = List.copyOf(streams);
        }
    }

    /** What the contents of entries name, in the order in which they name it. */
    static Set<Thing> of(Stream<Json> contents) {
        Leanings leanings = new Leanings();
        contents.forEach(leanings::walk);
        return leanings.found;
    }

    /**
     * What the contents of entries name, in the order in which they name it.
     *
     * @param contents canonical JSON of events; what is no JSON is passed over
     */
    public static Set<Thing> inTexts(Stream<String> contents) {
        return of(contents.flatMap(text -> {
            try {
                return Stream.of(StrictJson.read(text));
            } catch (NotJson wrong) {
                return Stream.empty();
            }
        }));
    }

    private void walk(Json value) {
        switch (value) {
            case Json.Values values -> values.of().forEach(this::walk);
            case Json.Members members -> {
                named(members);
                members.of().values().forEach(this::walk);
            }
            case Json.Text text -> { }
            case Json.Number number -> { }
            case Json.Truth truth -> { }
            case Json.Nothing nothing -> { }
        }
    }

    private void named(Json.Members members) {
        members.of().forEach((name, value) -> value.plain().ifPresent(label ->
                add(label, FAMILIES.getOrDefault(name, List.of()))));
        members.at("procedure", "id").flatMap(Json::plain).ifPresent(id -> add(id, List.of("procedure")));
        members.at("signer").ifPresent(signer -> {
            signer.text("badge").ifPresent(badge -> add(badge, List.of("person")));
            signer.text("stamp").ifPresent(stamp -> add(stamp, List.of("stamp")));
        });
        members.text("label").ifPresent(label -> members.text("kind").ifPresent(kind -> add(label, touching(kind))));
    }

    private static List<String> touching(String kind) {
        return switch (kind) {
            case "BATH" -> List.of("bath");
            case "ARGON" -> List.of("argon", "supply");
            case "GAUGE" -> List.of("meter", "supply");
            // Wire that was cleaned as a lot of its own has a traveller.
            case "FILLER" -> List.of("supply", "traveller");
            default -> List.of("supply");
        };
    }

    private void add(String label, List<String> families) {
        List<StreamName> streams = families.stream().flatMap(family -> stream(family, label).stream()).toList();
        if (!streams.isEmpty()) {
            found.add(new Thing(label, streams));
        }
    }

    /** The stream of {@code label}; empty where no stream has such a name. */
    static Optional<StreamName> stream(String family, String label) {
        try {
            return Optional.of(StreamName.of(family, label));
        } catch (IllegalArgumentException noLabel) {
            return Optional.empty();
        }
    }
}
