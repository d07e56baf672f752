package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Remembered;
import brightseam.people.Person;
import brightseam.people.Qualification;
import brightseam.people.Role;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Reads people back from their rows. */
@Component
class PersonReader {

    private static final String EVERYBODY = "%";

    private final JdbcClient jdbc;
    private final Ledger ledger;
    private final Map<BadgeId, Remembered<Optional<Person>>> persons = new ConcurrentHashMap<>();

    PersonReader(JdbcClient jdbc, Ledger ledger) {
        this.jdbc = jdbc;
        this.ledger = ledger;
    }

    Optional<Person> find(BadgeId badge) {
        Remembered<Optional<Person>> known = persons.get(badge);
        if (known != null) {
            return known.get();
        }
        Optional<Person> found = read(badge);
        found.ifPresent(person -> persons.put(
                badge, new Remembered<>(ledger, PersonCodec.PERSON, () -> read(badge))));
        return found;
    }

    private Optional<Person> read(BadgeId badge) {
        return matching(badge.value()).stream().findFirst();
    }

    List<Person> all() {
        return matching(EVERYBODY);
    }

    boolean nobody() {
        return jdbc.sql("select count(*) from person_row").query(Long.class).single() == 0;
    }

    Optional<BadgeId> stampEverHeldBy(String stamp) {
        return jdbc.sql("select badge from stamp_row where stamp = ?")
                .params(stamp)
                .query((row, number) -> new BadgeId(row.getString("badge")))
                .optional();
    }

    /** Every stamp number that was ever issued, by number. */
    List<String> stampNumbers() {
        return jdbc.sql("select stamp from stamp_row order by stamp").query(String.class).list();
    }

    /** A badge has no per cent sign or underscore, so that {@code like} on a badge is equality. */
    private List<Person> matching(String pattern) {
        Map<String, List<Role>> roles = roles(pattern);
        Map<String, List<Qualification>> qualifications = qualifications(pattern);
        return jdbc.sql("""
                select badge, name, active, stamp, pin_set, pin_locked
                from person_row where badge like ? order by badge""")
                .params(pattern)
                .query((row, number) -> person(row, roles, qualifications))
                .list();
    }

    private Map<String, List<Role>> roles(String pattern) {
        return jdbc.sql("select badge, role from person_role_row where badge like ?")
                .params(pattern)
                .query((row, number) -> Map.entry(row.getString("badge"), Role.valueOf(row.getString("role"))))
                .list().stream()
                .collect(Collectors.groupingBy(Map.Entry::getKey, TreeMap::new,
                        Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    }

    private Map<String, List<Qualification>> qualifications(String pattern) {
        Map<String, List<Qualification>> found = new TreeMap<>();
        jdbc.sql("""
                select badge, word, until_millis
                from person_qualification_row where badge like ? order by badge, word""")
                .params(pattern)
                .query(row -> {
                    found.computeIfAbsent(row.getString("badge"), badge -> new ArrayList<>()).add(new Qualification(
                            row.getString("word"), Instant.ofEpochMilli(row.getLong("until_millis"))));
                });
        return found;
    }

    private static Person person(
            ResultSet row, Map<String, List<Role>> roles, Map<String, List<Qualification>> qualifications)
            throws SQLException {
        String badge = row.getString("badge");
        return new Person(
                new BadgeId(badge),
                row.getString("name"),
                roles.getOrDefault(badge, List.of()),
                Optional.ofNullable(row.getString("stamp")),
                qualifications.getOrDefault(badge, List.of()),
                row.getBoolean("active"),
                row.getBoolean("pin_set"),
                row.getBoolean("pin_locked"));
    }
}
