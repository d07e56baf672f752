package brightseam.traveller;

import brightseam.people.Role;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What may become of a nonconformance, and which roles may say so. */
public enum Disposition {
    /** Back to a named step; what was signed from there on is superseded. */
    REWORK(EnumSet.of(Role.LEAD, Role.INSPECTOR)),
    /** Mended by other means, described in the reason. */
    REPAIR(EnumSet.of(Role.INSPECTOR)),
    /** Goes on as it is. */
    USE_AS_IS(EnumSet.of(Role.INSPECTOR)),
    /** The pieces leave the lot and are made unusable. */
    SCRAP(EnumSet.of(Role.LEAD, Role.INSPECTOR));

    private final Set<Role> roles;

    Disposition(Set<Role> roles) {
        this.roles = roles;
    }

    /** What somebody with {@code held} may say, in the order that screens offer it. */
    public static List<Disposition> openTo(Collection<Role> held) {
        return Arrays.stream(values()).filter(one -> one.roles.stream().anyMatch(held::contains)).toList();
    }

    /** Who may say so. */
    public Set<Role> roles() {
        return Set.copyOf(roles);
    }
}
