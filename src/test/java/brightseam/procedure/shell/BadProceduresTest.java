package brightseam.procedure.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.procedure.Draft;
import brightseam.procedure.ProcedureRules;
import brightseam.procedure.Rule;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.ProcedureLoader.Loaded;
import brightseam.procedure.shell.ProcedureLoader.Loading;
import brightseam.procedure.shell.ProcedureLoader.Unsound;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each file is {@code good.yaml} with one thing changed; beside it stands what the program has to say about it. */
class BadProceduresTest {

    private static final Path FOLDER = Path.of("src/test/resources/bad-procedures");
    private static final Vocabulary VOCABULARY = SharedTables.read();
    private static final ProcedureLoader LOADER = new ProcedureLoader(VOCABULARY);
    private static final SchemaCheck SCHEMA = new SchemaCheck("procedure");

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_file_is_answered_with_what_stands_beside_it(Path file) throws IOException {
        String expected = Files.readString(Path.of(file.toString().replace(".yaml", ".expected")));
        assertEquals(expected, said(LOADER.load(file.getFileName().toString(), Files.readAllBytes(file))));
        assertEquals(file.endsWith("good.yaml"), expected.isEmpty());
    }

    @Test
    void every_rule_of_sense_is_broken_by_a_file() throws IOException {
        Set<String> broken = new TreeSet<>();
        for (Path file : files()) {
            draft(file).ifPresent(draft -> ProcedureRules.all().stream()
                    .filter(rule -> !rule.check(draft, VOCABULARY).isEmpty())
                    .forEach(rule -> broken.add(rule.name())));
        }
        assertEquals(new TreeSet<>(ProcedureRules.all().stream().map(Rule::name).toList()), broken);
    }

    @Test
    void a_file_larger_than_any_procedure_is_refused_unread() {
        Loading loading = LOADER.load("large.yaml", new byte[FileText.SIZE_MAX_BYTES + 1]);
        assertTrue(said(loading).startsWith("large.yaml:1:1: a file of 262145 bytes; expected at most"), said(loading));
    }

    private static Optional<Draft> draft(Path file) throws IOException {
        try {
            YamlTree tree = YamlReader.read(FileText.read(Files.readAllBytes(file)));
            boolean wellFormed = tree.duplicates().isEmpty() && SCHEMA.check(tree).isEmpty();
            return wellFormed ? Optional.of(TreeMapper.read(tree.root(), Draft.class)) : Optional.empty();
        } catch (FaultyText broken) {
            return Optional.empty();
        }
    }

    private static String said(Loading loading) {
        return switch (loading) {
            case Loaded loaded -> "";
            case Unsound unsound -> unsound.problems().stream()
                    .map(problem -> problem + "\n")
                    .collect(Collectors.joining());
        };
    }
}
