package brightseam.procedure;

import static brightseam.procedure.Rule.when;

import brightseam.procedure.Draft.StepDraft;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Rules about keys: what a procedure cites exists, and what a station always asks for is there. */
final class CitationRules {

    /** The source that every procedure lists before all others. */
    static final String SHOP_SPECIFICATION = "shop-specification";

    private CitationRules() {}

    static Stream<Breach> stationsAreKnown(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return known("station", step.station(), vocabulary.stations().keySet(), "/steps/" + place + "/station");
    }

    static Stream<Breach> cautionsAreKnown(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return eachOf(step.cautions(), "/steps/" + place + "/cautions/",
                (caution, at) -> known("caution", caution, vocabulary.cautions().keySet(), at));
    }

    static Stream<Breach> glovesAreKnown(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return step.gloves().stream().flatMap(gloves ->
                known("gloves", gloves, vocabulary.gloves().keySet(), "/steps/" + place + "/gloves"));
    }

    static Stream<Breach> unitsAreKnown(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return IntStream.range(0, step.readings().size()).boxed().flatMap(i -> known("unit",
                step.readings().get(i).unit(), vocabulary.units().keySet(),
                "/steps/" + place + "/readings/" + i + "/unit"));
    }

    static Stream<Breach> sourcesAreListed(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        Set<String> listed = new TreeSet<>(draft.sources().stream().map(Source::key).toList());
        return eachOf(step.sources(), "/steps/" + place + "/sources/",
                (source, at) -> known("source", source, listed, at));
    }

    static Stream<Breach> sourceKeysAreUnique(Draft draft, Vocabulary vocabulary) {
        List<String> keys = draft.sources().stream().map(Source::key).toList();
        return IntStream.range(0, keys.size()).boxed().flatMap(i -> when(keys.indexOf(keys.get(i)) < i,
                "/sources/" + i + "/key", "a second source named " + keys.get(i), "a key that no other source has"));
    }

    static Stream<Breach> everySourceIsCited(Draft draft, Vocabulary vocabulary) {
        Set<String> cited = new TreeSet<>(draft.steps().stream().flatMap(step -> step.sources().stream()).toList());
        List<Source> sources = draft.sources();
        return IntStream.range(0, sources.size()).boxed().flatMap(i -> when(!cited.contains(sources.get(i).key()),
                "/sources/" + i + "/key", "source " + sources.get(i).key() + " that no step cites",
                "a source that at least one step cites"));
    }

    static Stream<Breach> theShopSpecificationGoesFirst(Draft draft, Vocabulary vocabulary) {
        return when(!draft.sources().getFirst().key().equals(SHOP_SPECIFICATION), "/sources/0/key",
                "first source " + draft.sources().getFirst().key(),
                SHOP_SPECIFICATION + ": the shop's own specification and the drawing go first");
    }

    static Stream<Breach> theStationsCautionsAreShown(
            Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return Stream.ofNullable(vocabulary.stations().get(step.station()))
                .flatMap(station -> station.cautions().stream())
                .flatMap(caution -> when(!step.cautions().contains(caution), "/steps/" + place + "/cautions",
                        "no caution " + caution + " at " + step.station(), "every caution of the station"));
    }

    static Stream<Breach> nothingHarmfulIsNeeded(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return eachOf(step.needs(), "/steps/" + place + "/needs/", (need, at) -> harm(vocabulary, need).stream()
                .map(harm -> new Breach(at, "\"" + need + "\": " + harm.reason(),
                        "nothing of " + String.join(", ", harm.words()))));
    }

    private static Optional<Vocabulary.KeptAway> harm(Vocabulary vocabulary, String need) {
        String lower = need.toLowerCase(Locale.ROOT);
        return vocabulary.keptAway().stream()
                .filter(row -> row.words().stream().anyMatch(lower::contains))
                .findFirst();
    }

    private interface KeyCheck {
        Stream<Breach> breaches(String key, String at);
    }

    private static Stream<Breach> eachOf(List<String> keys, String under, KeyCheck check) {
        return IntStream.range(0, keys.size()).boxed().flatMap(i -> check.breaches(keys.get(i), under + i));
    }

    private static Stream<Breach> known(String what, String key, Set<String> keys, String at) {
        return when(!keys.contains(key), at, "unknown " + what + " " + key, "one of " + String.join(", ",
                new TreeSet<>(keys)));
    }
}
