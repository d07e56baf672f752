package brightseam.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ArchitectureTest {

    private static final Set<String> ABOVE = Set.of("ui", "demo", "rest", "app");
    private static final Set<String> CLOCKS = Set.of("now", "currentTimeMillis", "nanoTime", "systemUTC",
            "systemDefaultZone", "system");

    private static FeatureTable table;
    private static JavaClasses classes;

    @BeforeAll
    static void read() throws IOException {
        table = FeatureTable.read();
        classes = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("brightseam");
    }

    @Test
    void every_feature_in_the_table_exists_and_every_feature_that_exists_is_in_the_table() {
        Set<String> found = new TreeSet<>();
        classes.forEach(type -> found.add(feature(type)));
        found.removeAll(ABOVE);
        assertThat(table.rows().keySet()).containsExactlyInAnyOrderElementsOf(found);
    }

    @Test
    void cores_use_plain_java_and_the_cores_of_their_row() {
        List<String> wrong = new ArrayList<>();
        for (JavaClass type : classes) {
            if (ABOVE.contains(feature(type)) || isShell(type)) {
                continue;
            }
            type.getDirectDependenciesFromSelf().forEach(use -> {
                JavaClass target = use.getTargetClass().getBaseComponentType();
                boolean fine = target.isPrimitive() || target.getPackageName().startsWith("java.")
                        || isOurs(target) && !isShell(target) && mayUse(type, target, false);
                if (!fine) {
                    wrong.add(type.getName() + " uses " + target.getName());
                }
            });
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void shells_use_the_features_of_their_row() {
        List<String> wrong = new ArrayList<>();
        for (JavaClass type : classes) {
            if (!isShell(type)) {
                continue;
            }
            type.getDirectDependenciesFromSelf().forEach(use -> {
                JavaClass target = use.getTargetClass().getBaseComponentType();
                if (isOurs(target) && !mayUse(type, target, true)) {
                    wrong.add(type.getName() + " uses " + target.getName());
                }
            });
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void nothing_below_uses_screens_demo_or_wiring() {
        List<String> wrong = new ArrayList<>();
        for (JavaClass type : classes) {
            if (!ABOVE.contains(feature(type))) {
                type.getDirectDependenciesFromSelf().stream().map(use -> use.getTargetClass())
                        .filter(target -> isOurs(target) && ABOVE.contains(feature(target)))
                        .forEach(target -> wrong.add(type.getName() + " uses " + target.getName()));
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void cores_are_told_the_time() {
        List<String> wrong = new ArrayList<>();
        for (JavaClass type : classes) {
            if (ABOVE.contains(feature(type)) || isShell(type)) {
                continue;
            }
            for (JavaMethodCall call : type.getMethodCallsFromSelf()) {
                String owner = call.getTargetOwner().getName();
                if ((owner.startsWith("java.time.") || owner.equals("java.lang.System"))
                        && CLOCKS.contains(call.getName())) {
                    wrong.add(call.getDescription());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void features_do_not_depend_on_one_another_in_a_circle() {
        for (String feature : table.rows().keySet()) {
            assertThat(reachable(feature)).as("what %s rests on", feature).doesNotContain(feature);
        }
    }

    private static Set<String> reachable(String from) {
        Set<String> seen = new TreeSet<>();
        List<String> open = new ArrayList<>(neighbours(from));
        while (!open.isEmpty()) {
            String next = open.removeLast();
            if (seen.add(next)) {
                open.addAll(neighbours(next));
            }
        }
        return seen;
    }

    private static Set<String> neighbours(String feature) {
        Set<String> all = new TreeSet<>(table.rows().get(feature).core());
        all.addAll(table.rows().get(feature).shell());
        all.remove(feature);
        return all;
    }

    private static boolean mayUse(JavaClass type, JavaClass target, boolean shell) {
        FeatureTable.Row row = table.rows().get(feature(type));
        return feature(target).equals(feature(type))
                || (shell ? row.shell() : row.core()).contains(feature(target));
    }

    private static boolean isOurs(JavaClass type) {
        return type.getPackageName().startsWith("brightseam");
    }

    private static boolean isShell(JavaClass type) {
        return type.getPackageName().contains(".shell");
    }

    private static String feature(JavaClass type) {
        String[] parts = type.getPackageName().split("\\.");
        return parts.length > 1 ? parts[1] : "";
    }
}
