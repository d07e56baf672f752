package brightseam.people;

import brightseam.kernel.BadgeId;
import java.util.Optional;

/**
 * What the decider must know beyond the person in question.
 *
 * @param asker the person behind the command's origin; empty where the server itself asks or nobody has that badge
 * @param otherAdministrators how many other active people are administrators
 * @param stampEverHeldBy who holds or held the stamp number of an {@code IssueStamp}
 * @param stamp the stamp whose number a command about a stamp names, where there is one
 */
public record PersonFacts(
        Optional<Person> asker, int otherAdministrators, Optional<BadgeId> stampEverHeldBy, Optional<Stamp> stamp) {

    /** Facts for a command that is about no stamp that was issued. */
    public PersonFacts(Optional<Person> asker, int otherAdministrators, Optional<BadgeId> stampEverHeldBy) {
        this(asker, otherAdministrators, stampEverHeldBy, Optional.empty());
    }
}
