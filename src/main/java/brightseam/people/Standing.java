package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.people.PermissionRefusal.AskerInactive;
import brightseam.people.PermissionRefusal.AskerUnknown;
import brightseam.people.PermissionRefusal.RoleNeeded;
import brightseam.people.PermissionRefusal.SignerChanged;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the register says of a person at this moment: all that decides whether somebody may ask for something.
 *
 * @param active whether the badge is open
 * @param roles what the person may do now
 */
public record Standing(boolean active, Set<Role> roles) {

    /** Copies the roles. */
    public Standing {
        roles = Set.copyOf(roles);
    }

    /**
     * What stands against the holder of {@code badge} doing something that {@code allowed} may do.
     *
     * @param found as the register knows the badge; empty where it does not
     */
    public static Optional<PermissionRefusal> objection(BadgeId badge, Optional<Standing> found, Set<Role> allowed) {
        if (found.isEmpty()) {
            return Optional.of(new AskerUnknown(badge));
        }
        if (!found.get().active()) {
            return Optional.of(new AskerInactive(badge));
        }
        return Collections.disjoint(found.get().roles(), allowed)
                ? Optional.of(new RoleNeeded(badge, allowed.stream().sorted().toList()))
                : Optional.empty();
    }

    /** As {@link #objection}, of whoever signs it; also where {@code signer} says other roles than the register. */
    public static Optional<PermissionRefusal> objection(Signer signer, Optional<Standing> found, Set<Role> allowed) {
        return objection(signer.badge(), found, allowed).or(() -> found
                .filter(standing -> !standing.roles().equals(Set.copyOf(signer.roles())))
                .map(changed -> new SignerChanged(signer.badge())));
    }

    /** A standing of {@code roles}. */
    public static Standing of(boolean active, List<Role> roles) {
        return new Standing(active, Set.copyOf(roles));
    }
}
