package brightseam.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.demo.DemoPerson;
import brightseam.kit.shell.Kits;
import brightseam.people.Role;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.board.DeskBrowser;
import com.microsoft.playwright.Locator;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every list of every desk can be taken away as CSV: the pages are found, not listed. */
class EveryListIT {

    /** What somebody has just typed is answered in place; there is nothing to take away. */
    private static final Set<String> ANSWERS_TO_TYPED_LISTS =
            Set.of("brightseam.ui.board.ListForm", "brightseam.ui.weld.MapListForm");
    private static final Set<String> PHOTOGRAPHED = Set.of("shop/people", "baths/S-PICKLE-1", "shop/bins");

    private static JavaClasses classes;
    private static ShopServer shop;
    private static final Map<Role, DeskBrowser> BROWSERS = new EnumMap<>(Role.class);

    @BeforeAll
    static void open() {
        classes = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("brightseam");
        shop = ShopServer.demo();
    }

    @AfterAll
    static void close() {
        BROWSERS.values().forEach(DeskBrowser::close);
        shop.close();
    }

    @Test
    void every_table_is_of_the_kind_that_has_a_file_and_few_are_without_it() {
        Set<String> without = new TreeSet<>();
        Set<String> ownTables = new TreeSet<>();
        for (JavaClass type : classes) {
            type.getMethodCallsFromSelf().stream().filter(call -> call.getName().equals("withoutFile"))
                    .forEach(call -> without.add(type.getName()));
            type.getConstructorCallsFromSelf().stream()
                    .filter(call -> call.getTargetOwner().isEquivalentTo(NativeTable.class))
                    .forEach(call -> ownTables.add(type.getName()));
        }
        assertThat(without).isEqualTo(ANSWERS_TO_TYPED_LISTS);
        assertThat(ownTables).containsExactly(DeskTable.class.getName());
    }

    @Test
    void every_list_on_every_page_can_be_taken_away_with_its_rows() {
        Map<String, Integer> filesByPage = new TreeMap<>();
        pages().forEach((path, role) -> {
            DeskBrowser browser = BROWSERS.computeIfAbsent(role, any -> new DeskBrowser(shop, holder(role)));
            browser.open("/" + path);
            Locator tables = browser.page().locator(".desk-table:has(table):visible");
            for (Locator table : tables.all()) {
                check(path, browser, table);
            }
            filesByPage.put(path, tables.count());
            if (PHOTOGRAPHED.contains(path)) {
                browser.look("csv-" + path.replace('/', '-'));
            }
        });
        assertThat(filesByPage.values().stream().mapToInt(Integer::intValue).sum()).isGreaterThan(20);
    }

    private static void check(String path, DeskBrowser browser, Locator table) {
        String caption = table.locator("caption").innerText();
        Locator link = table.locator("a.desk-csv");
        assertThat(link.count()).as("a file under '%s' on %s", caption, path).isEqualTo(1);
        var answer = browser.page().request().get(link.evaluate("link => link.href").toString());
        assertThat(answer.status()).as(caption + " on " + path).isEqualTo(200);
        assertThat(answer.headers().get("content-disposition")).startsWith("attachment").contains(".csv");
        assertThat(answer.headers().get("content-type")).isEqualTo("text/csv;charset=utf-8");
        long lines = lines(answer.text());
        assertThat(lines).as("lines of '%s' on %s", caption, path)
                .isGreaterThan(table.locator("tbody tr").count());
        assertThat(answer.text().lines().findFirst().orElse("")).as(caption + " on " + path)
                .contains(",").doesNotContain(",,").doesNotContain("Actions");
    }

    /** Lines that no quotes enclose (RFC 4180). */
    private static long lines(String csv) {
        boolean quoted = false;
        long lines = 0;
        for (char c : csv.toCharArray()) {
            quoted ^= c == '"';
            lines += c == '\n' && !quoted ? 1 : 0;
        }
        return lines;
    }

    private static Map<String, Role> pages() {
        Map<String, Role> pages = new TreeMap<>();
        for (JavaClass type : classes) {
            if (type.isAnnotatedWith(Route.class) && type.isAssignableTo(DeskPage.class)
                    && type.isAnnotatedWith(RolesAllowed.class)) {
                Role role = Role.valueOf(Arrays.stream(type.getAnnotationOfType(RolesAllowed.class).value())
                        .sorted().toList().getFirst());
                pages.put(filled(type.getAnnotationOfType(Route.class).value()), role);
            }
        }
        String bin = shop.bean(brightseam.bins.shell.Bins.class).all().getFirst().id().value();
        pages.put("trace?kind=bin&label=" + bin, Role.LEAD);
        return pages;
    }

    /** The address of {@code route} with labels of the demo shop; fails for a parameter that nobody has named here. */
    private static String filled(String route) {
        Map<String, String> labels = Map.of("board/kit/:id", kit(), "board/traveller/:id", traveller(),
                "stamp/:traveller", traveller(), "stamp/joints/:kit/:joint?", kit(), ":station", "S-PICKLE-1",
                "shop/chamber/:station", "S-CHAMBER-1", ":meter", "G-0601", ":badge", "P-0301", ":id", "TUBE");
        String path = route.endsWith("/weld-map") ? "board/kit/" + kit() + "/weld-map" : route;
        for (Map.Entry<String, String> label : labels.entrySet().stream()
                .sorted((a, b) -> b.getKey().length() - a.getKey().length()).toList()) {
            if (path.equals(label.getKey())) {
                return path.substring(0, path.indexOf(':')) + label.getValue();
            }
            if (label.getKey().startsWith(":")) {
                path = path.replaceAll(label.getKey() + "(?=/|$)", label.getValue());
            }
        }
        assertThat(path).as("a label for the parameters of " + route).doesNotContain(":");
        return path;
    }

    private static String kit() {
        return shop.bean(Kits.class).open().getFirst().id().value();
    }

    private static String traveller() {
        return shop.bean(Travellers.class).notEnded().getFirst().id().value();
    }

    private static DemoPerson holder(Role role) {
        return Arrays.stream(DemoPerson.values()).filter(person -> person.role() == role).findFirst()
                .orElseThrow(() -> new AssertionError(List.of(DemoPerson.values()).stream().map(Enum::name)
                        .collect(Collectors.joining(" ")) + ": nobody is " + role));
    }
}
