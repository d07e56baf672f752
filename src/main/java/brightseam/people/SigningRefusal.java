package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Refusal;
import java.time.Instant;

/** Why a person may not sign a step. */
public sealed interface SigningRefusal extends Refusal {

    /** The person is deactivated. */
    record NotActive(BadgeId badge) implements SigningRefusal {
        @Override
        public String code() {
            return "not-active";
        }
    }

    /** The shop asks for a qualification that the person never had. */
    record NotQualified(BadgeId badge, String word) implements SigningRefusal {
        @Override
        public String code() {
            return "not-qualified";
        }
    }

    /** The qualification that the shop asks for ran out at {@code until}. */
    record QualificationExpired(BadgeId badge, String word, Instant until) implements SigningRefusal {
        @Override
        public String code() {
            return "qualification-expired";
        }
    }
}
