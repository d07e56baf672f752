package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.people.Role;
import brightseam.people.Standing;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Says who may do what at this moment; asked before every command, so in one query. */
@Service
public class Standings {

    private final JdbcClient jdbc;

    Standings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * As the register knows {@code badge} now, whatever its session was told when it began.
     *
     * @return empty where nobody has it
     * @throws org.springframework.dao.DataAccessException where the database does not answer
     */
    public Optional<Standing> of(BadgeId badge) {
        List<Line> lines = jdbc.sql("""
                        select p.active, r.role from person_row p left join person_role_row r on r.badge = p.badge
                        where p.badge = ?""")
                .params(badge.value())
                .query((row, number) -> new Line(row.getBoolean("active"),
                        Optional.ofNullable(row.getString("role")).map(Role::valueOf)))
                .list();
        return lines.stream().findFirst().map(first -> Standing.of(first.active(),
                lines.stream().flatMap(line -> line.role().stream()).toList()));
    }

    private record Line(boolean active, Optional<Role> role) {}
}
