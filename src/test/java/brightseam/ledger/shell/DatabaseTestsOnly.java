package brightseam.ledger.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.platform.engine.FilterResult;
import org.junit.platform.engine.TestDescriptor;
import org.junit.platform.engine.support.descriptor.ClassSource;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.junit.platform.launcher.PostDiscoveryFilter;

/**
 * In the run on PostgreSQL: the test classes that touch a database, and no others. They are found by what their
 * compiled classes name, directly or by way of other classes of the tests, so that a new one cannot be forgotten.
 */
public final class DatabaseTestsOnly implements PostDiscoveryFilter {

    private static final String OWN = "brightseam/ledger/shell/";

    private final Set<String> touching = TestDatabase.isPostgres() ? touching() : Set.of();

    @Override
    public FilterResult apply(TestDescriptor test) {
        boolean wanted = !TestDatabase.isPostgres() || className(test).map(touching::contains).findAny().orElse(true);
        return FilterResult.includedIf(wanted);
    }

    private static Stream<String> className(TestDescriptor test) {
        return test.getSource().stream().flatMap(source -> switch (source) {
            case ClassSource of -> Stream.of(of.getClassName());
            case MethodSource of -> Stream.of(of.getClassName());
            default -> Stream.empty();
        });
    }

    private static Set<String> touching() {
        Map<String, String> texts = texts();
        Set<String> found = new HashSet<>(Set.of(OWN + "FreshDatabase", OWN + "TestLedger"));
        Set<String> latest = Set.copyOf(found);
        while (!latest.isEmpty()) {
            Set<String> before = latest;
            latest = texts.entrySet().stream().filter(one -> !found.contains(one.getKey()))
                    .filter(one -> before.stream().anyMatch(one.getValue()::contains))
                    .map(Map.Entry::getKey).collect(Collectors.toSet());
            found.addAll(latest);
        }
        return found.stream().map(name -> name.replace('/', '.')).collect(Collectors.toSet());
    }

    /** The bytes of every class of the tests as text, by its name; names of other classes stand in them as they are. */
    private static Map<String, String> texts() {
        try {
            Path root = Path.of(DatabaseTestsOnly.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            Map<String, String> texts = new HashMap<>();
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(path -> path.toString().endsWith(".class")).toList()) {
                    String name = root.relativize(file).toString().replace('\\', '/');
                    texts.put(name.substring(0, name.length() - ".class".length()),
                            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
                }
            }
            return texts;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        } catch (java.net.URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
