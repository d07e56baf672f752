package brightseam.people;

import brightseam.kernel.BadgeId;
import java.util.List;
import java.util.Optional;

/**
 * A person at the moment of signing, as it is written into the record.
 *
 * @param badge whose badge
 * @param name the printed name
 * @param roles what the person may do, sorted
 * @param stamp the stamp that only this person may use, where one is issued
 * @param factors how the person was recognised, such as {@code badge+pin}
 */
public record Signer(BadgeId badge, String name, List<Role> roles, Optional<String> stamp, String factors) {

    /** Sorts the roles, so that a written signature has one form. */
    public Signer {
        roles = roles.stream().distinct().sorted().toList();
    }

    /** {@code person}, recognised by {@code factors}. */
    public static Signer of(Person person, String factors) {
        return new Signer(person.badge(), person.name(), person.roles(), person.stamp(), factors);
    }

    /** Whether the person holds {@code role}. */
    public boolean has(Role role) {
        return roles.contains(role);
    }
}
