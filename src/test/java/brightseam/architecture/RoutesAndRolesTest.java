package brightseam.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouteAlias;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.annotation.security.DenyAll;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.web.bind.annotation.RequestMapping;

/** Who may open which page and ask which path: the whole table, so that a new one cannot be forgotten. */
class RoutesAndRolesTest {

    private static final String ANYBODY = "anybody";
    private static final String SIGNED_IN = "signed in";
    private static final String DESKS = "ADMINISTRATOR INSPECTOR LEAD";
    private static final String BATHS = "INSPECTOR LEAD PROCESS_CONTROL";
    private static final String OFFICE = "ADMINISTRATOR LEAD";

    private static JavaClasses classes;

    @BeforeAll
    static void read() {
        classes = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("brightseam");
    }

    @Test
    void every_page_is_open_to_exactly_the_roles_in_these_tables() {
        Map<String, String> pages = pages();
        Map<String, String> registers = new TreeMap<>(pages);
        registers.keySet().removeIf(path -> !path.startsWith("shop"));
        pages.keySet().removeAll(registers.keySet());
        assertWork(pages);
        assertRegisters(registers);
    }

    private static void assertWork(Map<String, String> pages) {
        assertThat(pages).containsOnly(
                entry("", SIGNED_IN),
                entry("sign-in", ANYBODY),
                entry("first-run", ANYBODY),
                entry("leave", SIGNED_IN),
                entry("pin", SIGNED_IN),
                entry("demo", SIGNED_IN),
                entry("bench", "FABRICATOR"),
                entry("board", DESKS),
                entry("board/kit/:id", DESKS),
                entry("board/kit/:id/weld-map", "LEAD"),
                entry("board/traveller/:id", DESKS),
                entry("argon", "FABRICATOR LEAD PROCESS_CONTROL"),
                entry("argon/delivery", "LEAD PROCESS_CONTROL"),
                entry("baths", BATHS),
                entry("baths/:station", BATHS),
                entry("baths/:station/sample", "PROCESS_CONTROL"),
                entry("baths/:station/addition", "PROCESS_CONTROL"),
                entry("baths/:station/limits", "PROCESS_CONTROL"),
                entry("line", "INSPECTOR LEAD"),
                entry("release", "LEAD"),
                entry("stamp", "INSPECTOR"),
                entry("stamp/:traveller", "INSPECTOR"),
                entry("stamp/joints", "INSPECTOR"),
                entry("stamp/joints/:kit/:joint?", "INSPECTOR"),
                entry("trace", "INSPECTOR LEAD PROCESS_CONTROL"),
                entry("plan", "FABRICATOR INSPECTOR LEAD"),
                entry("chamber", "FABRICATOR INSPECTOR LEAD"),
                entry("chamber/:session", "FABRICATOR INSPECTOR LEAD"),
                entry("chamber/:session/lock", "FABRICATOR INSPECTOR LEAD"),
                entry("chamber/:session/joint/:joint", "FABRICATOR INSPECTOR LEAD"));
    }

    private static void assertRegisters(Map<String, String> pages) {
        assertThat(pages).containsOnly(
                entry("shop", OFFICE),
                entry("shop/bins", OFFICE),
                entry("shop/chamber", "ADMINISTRATOR INSPECTOR LEAD PROCESS_CONTROL"),
                entry("shop/chamber/:station", "LEAD PROCESS_CONTROL"),
                entry("shop/heats", OFFICE),
                entry("shop/labels", OFFICE),
                entry("shop/meters", OFFICE),
                entry("shop/meters/:meter", "ADMINISTRATOR FABRICATOR INSPECTOR LEAD"),
                entry("shop/parts", OFFICE),
                entry("shop/people", "ADMINISTRATOR"),
                entry("shop/people/:badge", "ADMINISTRATOR"),
                entry("shop/procedures", OFFICE),
                entry("shop/procedures/:id", OFFICE),
                entry("shop/stamps", "ADMINISTRATOR INSPECTOR"),
                entry("shop/seals", "ADMINISTRATOR INSPECTOR"),
                entry("shop/stations", OFFICE),
                entry("shop/supplies", OFFICE),
                entry("shop/systems", "ADMINISTRATOR"));
    }

    /**
     * {@code Security} says who may ask: anybody for /alive, devices for readings, known tablets for frames. Below /api
     * {@code rest.ApiSecurity} asks for a token.
     */
    @Test
    void every_path_besides_the_pages_is_in_this_list() {
        assertThat(paths()).containsExactlyInAnyOrder(
                "GET /alive",
                "GET /enrol",
                "GET /enrol/authority.crt",
                "POST /scan/frame",
                "POST /feeds/readings",
                "GET /stamp/{id}/record.pdf",
                "GET /stamp/{id}/evidence.pdf",
                "GET /stamp/{id}/evidence.json",
                "GET /stamp/{id}/joints.csv",
                "GET /stamp/{id}/record.csv",
                "GET /picture/{sha256}",
                "GET /demo-labels.pdf",
                "GET /api/v1/openapi.yaml",
                "GET /api/v1/travellers",
                "GET /api/v1/travellers/{id}",
                "GET /api/v1/travellers/{id}/entries",
                "GET /api/v1/travellers/{id}/record.pdf",
                "GET /api/v1/travellers/{id}/evidence",
                "GET /api/v1/kits",
                "GET /api/v1/kits/{id}",
                "POST /api/v1/kits/{id}/releases",
                "REQUEST /api/**");
    }

    private static Map<String, String> pages() {
        Map<String, String> pages = new TreeMap<>();
        for (JavaClass type : classes) {
            assertThat(type.isAnnotatedWith(RouteAlias.class)).as(type.getName() + " has a second path").isFalse();
            if (type.isAnnotatedWith(Route.class)) {
                String path = type.getAnnotationOfType(Route.class).value();
                assertThat(pages.put(path, who(type))).as("two pages at " + path).isNull();
            }
        }
        return pages;
    }

    private static String who(JavaClass page) {
        List<String> said = new ArrayList<>();
        if (page.isAnnotatedWith(AnonymousAllowed.class)) {
            said.add(ANYBODY);
        }
        if (page.isAnnotatedWith(PermitAll.class)) {
            said.add(SIGNED_IN);
        }
        if (page.isAnnotatedWith(DenyAll.class)) {
            said.add("nobody");
        }
        if (page.isAnnotatedWith(RolesAllowed.class)) {
            said.add(String.join(" ", new TreeSet<>(List.of(page.getAnnotationOfType(RolesAllowed.class).value()))));
        }
        assertThat(said).as("who may open " + page.getName()).hasSize(1);
        return said.getFirst();
    }

    private static Set<String> paths() {
        Set<String> paths = new TreeSet<>();
        for (JavaClass type : classes) {
            for (JavaMethod method : type.getMethods()) {
                method.getAnnotations().stream().filter(RoutesAndRolesTest::maps)
                        .forEach(mapping -> paths.add(path(type, mapping)));
            }
        }
        return paths;
    }

    private static boolean maps(JavaAnnotation<?> annotation) {
        return annotation.getRawType().isEquivalentTo(RequestMapping.class)
                || annotation.getRawType().isMetaAnnotatedWith(RequestMapping.class);
    }

    private static String path(JavaClass type, JavaAnnotation<?> mapping) {
        assertThat(type.isAnnotatedWith(RequestMapping.class)).as(type.getName() + " puts a path before").isFalse();
        Map<String, Object> said = mapping.getProperties();
        String method = mapping.getRawType().getSimpleName().replace("Mapping", "").toUpperCase(Locale.ROOT);
        String[] value = (String[]) said.get("value");
        return method + " " + String.join(",", value.length > 0 ? value : (String[]) said.get("path"));
    }
}
