package brightseam.people;

import brightseam.kernel.BadgeId;
import java.util.Optional;

/**
 * What the decider must know beyond the person in question.
 *
 * @param asker the person behind the command's origin; empty where the server itself asks or nobody has that badge
 * @param otherAdministrators how many other active people are administrators
 * @param stampEverHeldBy who holds or held the stamp number of an {@code IssueStamp}
 */
public record PersonFacts(Optional<Person> asker, int otherAdministrators, Optional<BadgeId> stampEverHeldBy) {}
