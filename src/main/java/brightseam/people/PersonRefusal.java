package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Refusal;

/** Why a command about a person is refused. */
public sealed interface PersonRefusal extends Refusal {

    /** Only an administrator may ask for this. */
    record NotAdministrator(BadgeId by) implements PersonRefusal {
        @Override
        public String code() {
            return "not-administrator";
        }
    }

    /** Nobody has this badge. */
    record BadgeUnknown(BadgeId badge) implements PersonRefusal {
        @Override
        public String code() {
            return "badge-unknown";
        }
    }

    /** The badge belongs to {@code heldBy}, who may have left; a badge is never given twice. */
    record BadgeTaken(BadgeId badge, String heldBy) implements PersonRefusal {
        @Override
        public String code() {
            return "badge-taken";
        }
    }

    /** The badge is kept for the server's own entries. */
    record BadgeReserved(BadgeId badge) implements PersonRefusal {
        @Override
        public String code() {
            return "badge-reserved";
        }
    }

    /** A person needs at least one role. */
    record NoRole(BadgeId badge) implements PersonRefusal {
        @Override
        public String code() {
            return "no-role";
        }
    }

    /** The person is deactivated. */
    record PersonInactive(BadgeId badge) implements PersonRefusal {
        @Override
        public String code() {
            return "person-inactive";
        }
    }

    /** The number was issued before, to {@code heldBy}; withdrawn or not, it is never issued again. */
    record StampTaken(String stamp, BadgeId heldBy) implements PersonRefusal {
        @Override
        public String code() {
            return "stamp-taken";
        }
    }

    /** The person holds a stamp already; one person, one stamp. */
    record StampHeld(BadgeId badge, String stamp) implements PersonRefusal {
        @Override
        public String code() {
            return "stamp-held";
        }
    }

    /** The person holds no stamp that could be withdrawn. */
    record NoStampHeld(BadgeId badge) implements PersonRefusal {
        @Override
        public String code() {
            return "no-stamp-held";
        }
    }

    /** Only inspectors carry stamps. */
    record NotInspector(BadgeId badge) implements PersonRefusal {
        @Override
        public String code() {
            return "not-inspector";
        }
    }

    /** The shop would be left without an administrator. */
    record LastAdministrator(BadgeId badge) implements PersonRefusal {
        @Override
        public String code() {
            return "last-administrator";
        }
    }

    /** The code is not the one that this start of the server printed on its console. */
    record OpeningCodeWrong() implements PersonRefusal {
        @Override
        public String code() {
            return "opening-code-wrong";
        }
    }

    /** The shop has been opened: the first administrator exists. */
    record ShopAlreadyOpen() implements PersonRefusal {
        @Override
        public String code() {
            return "shop-already-open";
        }
    }

    /** No stamp of this number was issued to this badge. */
    record StampUnknown(BadgeId badge, String stamp) implements PersonRefusal {
        @Override
        public String code() {
            return "stamp-unknown";
        }
    }

    /** What the stamp is now does not let that happen to it. */
    record StampNot(String stamp, Stamp.State state) implements PersonRefusal {
        @Override
        public String code() {
            return "stamp-state";
        }
    }
}
