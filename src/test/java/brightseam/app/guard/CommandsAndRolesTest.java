package brightseam.app.guard;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.people.PermissionRefusal;
import brightseam.people.PersonCommand;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.people.shell.People;
import brightseam.traveller.shell.Actor;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.aop.support.AopUtils;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * Everything that people can have done, found by its types, tried by every role on the real server: what is answered is
 * the table that somebody approved. A new service, method or command is a new line here.
 */
class CommandsAndRolesTest {

    private static final Path APPROVED = Path.of("src/test/resources/approved/commands-roles.txt");
    private static final BadgeId NOBODY = new BadgeId("P-404");
    private static final BadgeId GONE = new BadgeId("P-90");
    private static final Map<Role, BadgeId> BADGES = new EnumMap<>(Role.class);

    private static ShopServer shop;
    private static ConfigurableApplicationContext context;

    @BeforeAll
    static void open_a_shop_with_somebody_of_every_role() {
        shop = ShopServer.empty("--brightseam.greeting=false",
                "--logging.level.brightseam.app.guard=error");
        context = shop.context();
        for (Role role : Role.values()) {
            BADGES.put(role, new BadgeId("P-" + (role.ordinal() + 1)));
            server(new PersonCommand.Register(origin(Origin.SHOP), BADGES.get(role), "Somebody", List.of(role)));
        }
        server(new PersonCommand.Register(origin(Origin.SHOP), GONE, "Gone", List.of(Role.values())));
        server(new PersonCommand.Deactivate(origin(Origin.SHOP), GONE, "left"));
    }

    @AfterAll
    static void close_it() {
        shop.close();
    }

    @Test
    void every_deed_is_done_by_exactly_the_roles_that_were_approved() throws IOException {
        Map<String, String> lines = new TreeMap<>();
        for (Object service : services()) {
            for (Method method : Deeds.methods(AopUtils.getTargetClass(service))) {
                commandsOf(method).forEach((deed, command) ->
                        lines.merge(deed, line(service, method, command), CommandsAndRolesTest::same));
            }
        }
        List<String> written = lines.entrySet().stream().map(line -> line.getKey() + ": " + line.getValue()).toList();
        if (Boolean.getBoolean("approve")) {
            Files.write(APPROVED, written);
        }
        assertThat(written).hasSizeGreaterThan(100).isEqualTo(Files.readAllLines(APPROVED));
    }

    @Test
    void the_table_names_every_deed_and_nothing_else() {
        Set<String> found = new TreeSet<>();
        services().forEach(service -> Deeds.methods(AopUtils.getTargetClass(service))
                .forEach(method -> found.addAll(Deeds.names(method))));
        assertThat(found).allSatisfy(deed -> assertThat(Permissions.knows(deed)).as(deed).isTrue());
        assertThat(Permissions.named()).allSatisfy(row -> assertThat(found).as(row).anyMatch(deed ->
                row.endsWith(".*") ? deed.startsWith(row.replace("*", "")) : deed.equals(row)));
    }

    @Test
    void every_service_of_a_feature_that_is_told_who_asks_stands_behind_the_guard() {
        Set<String> guarded = services().stream().map(service -> AopUtils.getTargetClass(service).getName())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> told = new TreeSet<>();
        new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("brightseam").stream().filter(CommandsAndRolesTest::isService).map(JavaClass::reflect)
                .filter(type -> !Deeds.methods(type).isEmpty()).forEach(type -> told.add(type.getName()));
        assertThat(guarded).containsExactlyElementsOf(told);
    }

    /** A class that Spring makes, by its own mark or by a wiring's method. */
    private static boolean isService(JavaClass type) {
        return GuardSetup.isService(type.reflect()) && !type.isInterface()
                && context.getBeanNamesForType(type.reflect()).length > 0;
    }

    private static List<Object> services() {
        return Stream.of(context.getBeanDefinitionNames()).map(context::getBean)
                .filter(bean -> GuardSetup.isService(AopUtils.getTargetClass(bean)))
                .filter(bean -> !Deeds.methods(AopUtils.getTargetClass(bean)).isEmpty())
                .peek(bean -> assertThat(AopUtils.isCglibProxy(bean)).as("guarded: " + bean.getClass()).isTrue())
                .toList();
    }

    /** What {@code method} can be asked for, by name: each command with its class, or the method itself. */
    private static Map<String, Optional<Class<?>>> commandsOf(Method method) {
        Map<String, Optional<Class<?>>> all = new TreeMap<>();
        Deeds.names(method).forEach(deed -> all.put(deed, Arrays.stream(method.getGenericParameterTypes())
                .map(Deeds::element).flatMap(CommandsAndRolesTest::leaves).<Class<?>>map(leaf -> leaf)
                .filter(leaf -> Deeds.isCommand(leaf) && Deeds.name(leaf).equals(deed)).findFirst()));
        return all;
    }

    private static Stream<Class<?>> leaves(Class<?> type) {
        return type.isSealed() ? Arrays.stream(type.getPermittedSubclasses()).flatMap(CommandsAndRolesTest::leaves)
                : Stream.of(type);
    }

    private static String same(String one, String other) {
        assertThat(one).as("two methods that do the same").isEqualTo(other);
        return one;
    }

    private String line(Object service, Method method, Optional<Class<?>> command) {
        assertThat(BADGES.values()).as("the server itself: " + method).anyMatch(signing ->
                !refusedFor(service, method, command, Origin.SHOP, signing));
        if (method.getReturnType() == void.class) {
            return "notes down, and nothing where the asker is unknown";
        }
        boolean reads = !refusedFor(service, method, command, NOBODY, NOBODY);
        if (reads) {
            return "tells";
        }
        assertThat(refusedFor(service, method, command, GONE, GONE)).as(method + " by who left").isTrue();
        List<Role> doers = Arrays.stream(Role.values()).filter(role -> Arrays.stream(Role.values()).anyMatch(by ->
                !refusedFor(service, method, command, BADGES.get(role), BADGES.get(by)))).toList();
        List<Role> signers = Arrays.stream(Role.values()).filter(role -> !doers.isEmpty()
                && !refusedFor(service, method, command, BADGES.get(doers.getFirst()), BADGES.get(role))).toList();
        boolean signed = signers.size() < Role.values().length;
        return doers.isEmpty() ? "services only" : words(doers) + (signed ? ", signed by " + words(signers) : "");
    }

    private static String words(List<Role> roles) {
        return roles.stream().map(Role::name).collect(Collectors.joining(" "));
    }

    /** Whether the guard refused it; what else came of it does not matter here. */
    private static boolean refusedFor(
            Object service, Method method, Optional<Class<?>> command, BadgeId by, BadgeId signing) {
        Map<Class<?>, Object> given = new HashMap<>(Map.of(Origin.class, origin(by),
                Actor.class, new Actor(by, "TAB-TEST"), Signer.class, signer(signing)));
        Anything anything = new Anything(given);
        command.ifPresent(type -> Arrays.stream(method.getGenericParameterTypes()).<Class<?>>map(Deeds::element)
                .filter(parameter -> Deeds.isCommand(parameter) && parameter.isAssignableFrom(type))
                .forEach(parameter -> given.put(parameter, anything.of(type))));
        Anything completed = new Anything(given);
        Object[] arguments = Arrays.stream(method.getGenericParameterTypes()).map(completed::of).toArray();
        try {
            method.setAccessible(true);
            return refusals(method.invoke(service, arguments)).stream()
                    .anyMatch(PermissionRefusal.class::isInstance);
        } catch (InvocationTargetException other) {
            return other.getCause().getMessage() != null && other.getCause().getMessage().startsWith("not permitted");
        } catch (IllegalAccessException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static List<Refusal> refusals(Object answer) {
        return switch (answer) {
            case Outcome.Refused<?> refused -> refused.refusals();
            case Prepared.Refused<?> refused -> refused.refusals();
            case Decision.Refused<?> refused -> refused.refusals();
            case null, default -> List.of();
        };
    }

    private static void server(PersonCommand command) {
        assertThat(shop.bean(People.class).run(command)).isInstanceOf(Decision.Accepted.class);
    }

    private static Origin origin(BadgeId by) {
        return new Origin(shop.bean(ShopClock.class).now(), by, "TAB-TEST", false);
    }

    private static Signer signer(BadgeId badge) {
        List<Role> roles = shop.bean(People.class).find(badge).map(person -> new ArrayList<>(person.roles()))
                .orElse(new ArrayList<>());
        return new Signer(badge, "Somebody", roles, Optional.empty(), "badge+pin");
    }
}
