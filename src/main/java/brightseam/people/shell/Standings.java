package brightseam.people.shell;

import brightseam.kernel.BadgeId;
import brightseam.people.Standing;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** Says who may do what at this moment; asked before every command. */
@Service
public class Standings {

    private final PersonReader people;

    Standings(PersonReader people) {
        this.people = people;
    }

    /**
     * As the register knows {@code badge} now, whatever its session was told when it began.
     *
     * @return empty where nobody has it
     * @throws org.springframework.dao.DataAccessException where the database does not answer
     */
    public Optional<Standing> of(BadgeId badge) {
        return people.find(badge).map(person -> Standing.of(person.active(), person.roles()));
    }
}
