package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Refusal;
import java.util.List;

/** Why somebody may not ask for something at all, whatever it is asked of. */
public sealed interface PermissionRefusal extends Refusal {

    /** Only whoever holds one of {@code roles} may ask for this; none are named where nobody may. */
    record RoleNeeded(BadgeId by, List<Role> roles) implements PermissionRefusal {
        @Override
        public String code() {
            return "role-needed";
        }
    }

    /** Nobody has this badge. */
    record AskerUnknown(BadgeId by) implements PermissionRefusal {
        @Override
        public String code() {
            return "asker-unknown";
        }
    }

    /** The badge is closed, be it since the page was opened. */
    record AskerInactive(BadgeId by) implements PermissionRefusal {
        @Override
        public String code() {
            return "asker-inactive";
        }
    }

    /** The signer's roles were changed between the PIN and the signature. */
    record SignerChanged(BadgeId by) implements PermissionRefusal {
        @Override
        public String code() {
            return "signer-changed";
        }
    }
}
