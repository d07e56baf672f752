package brightseam.procedure.shell;

import brightseam.procedure.Draft;
import brightseam.procedure.Problem;
import brightseam.procedure.Procedure;
import brightseam.procedure.ProcedureRules;
import brightseam.procedure.Vocabulary;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Makes procedures of files: UTF-8, then YAML, then the JSON Schema, then the rules of sense. Each stage reports all
 * that it finds; the next one looks only at what passed.
 */
public final class ProcedureLoader {

    /** What became of a file. */
    public sealed interface Loading {}

    /**
     * A file without a problem.
     *
     * @param procedure with the hash of the file's bytes
     * @param content the file's text, whose UTF-8 bytes have that hash
     */
    public record Loaded(Procedure procedure, String content) implements Loading {}

    /**
     * A file with problems; nothing of it is used.
     *
     * @param id the procedure's name, where the file got far enough to tell
     * @param problems at least one, in the order of the file
     */
    public record Unsound(Optional<String> id, List<Problem> problems) implements Loading {}

    private final Vocabulary vocabulary;
    private final SchemaCheck schema = new SchemaCheck("procedure");

    /** Judges keys by {@code vocabulary}. */
    public ProcedureLoader(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** Reads {@code bytes}; {@code file} is the name that problems are reported under. */
    public Loading load(String file, byte[] bytes) {
        try {
            String content = FileText.read(bytes);
            YamlTree tree = YamlReader.read(content);
            List<Fault> faults = Stream.concat(tree.duplicates().stream(), schema.check(tree).stream()).toList();
            if (!faults.isEmpty()) {
                return unsound(file, id(tree), faults);
            }
            Draft draft = TreeMapper.read(tree.root(), Draft.class);
            List<Fault> breaches = ProcedureRules.breaches(draft, vocabulary).stream()
                    .map(breach -> new Fault(tree.valueAt(breach.at()), breach.found(), breach.expected()))
                    .toList();
            return breaches.isEmpty()
                    ? new Loaded(draft.toProcedure(FileText.sha256(bytes)), content)
                    : unsound(file, id(tree), breaches);
        } catch (FaultyText broken) {
            return unsound(file, Optional.empty(), List.of(broken.fault()));
        }
    }

    /**
     * The procedure in {@code content} that was approved earlier. It is not judged again: a rule that was added since
     * must not take away a revision that travellers follow.
     *
     * @throws IllegalStateException where it cannot be read at all
     */
    public Procedure restore(String content) {
        try {
            Draft draft = TreeMapper.read(YamlReader.read(content).root(), Draft.class);
            return draft.toProcedure(FileText.sha256(content.getBytes(StandardCharsets.UTF_8)));
        } catch (FaultyText broken) {
            throw new IllegalStateException("an approved procedure cannot be read: " + broken.fault(), broken);
        }
    }

    private static Optional<String> id(YamlTree tree) {
        return tree.root().path("id").isString() ? Optional.of(tree.root().path("id").asString()) : Optional.empty();
    }

    private static Unsound unsound(String file, Optional<String> id, List<Fault> faults) {
        return new Unsound(id, faults.stream()
                .map(fault -> new Problem(file, fault.place().line(), fault.place().column(), fault.found(),
                        fault.expected()))
                .sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column))
                .toList());
    }
}
