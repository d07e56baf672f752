package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Syntax;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * One person of the shop, as folded from what happened to them.
 *
 * @param badge the label on the badge; never given to anybody else
 * @param name as printed beside a signature
 * @param roles what the person may do, in the order of {@link Role}, each once
 * @param stamp the number of the inspector's stamp that the person holds now
 * @param qualifications one for each word, the latest granted
 * @param active false once deactivated; such a person signs nothing and signs in nowhere
 * @param pinSet whether a PIN was ever set
 * @param pinLocked whether too many wrong PINs closed the badge
 */
public record Person(
        BadgeId badge,
        String name,
        List<Role> roles,
        Optional<String> stamp,
        List<Qualification> qualifications,
        boolean active,
        boolean pinSet,
        boolean pinLocked) {

    /** The longest name, in characters. */
    public static final int NAME_LENGTH_MAX = 80;

    /** Checks the name, sorts the roles and copies the lists. */
    public Person {
        name = Syntax.text("name", name, NAME_LENGTH_MAX);
        roles = sorted(roles);
        qualifications = List.copyOf(qualifications);
    }

    /** Whether the person holds {@code role}. */
    public boolean holds(Role role) {
        return roles.contains(role);
    }

    /** When the qualification for {@code word} ends or ended; empty where there never was one. */
    public Optional<Instant> qualifiedUntil(String word) {
        return qualifications.stream()
                .filter(qualification -> qualification.word().equals(word))
                .map(Qualification::until)
                .findFirst();
    }

    static List<Role> sorted(Collection<Role> roles) {
        return roles.stream().distinct().sorted().toList();
    }
}
