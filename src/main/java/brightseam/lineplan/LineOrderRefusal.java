package brightseam.lineplan;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Refusal;

/** Why an order for the line is refused. */
public sealed interface LineOrderRefusal extends Refusal {

    /** Without hands nothing moves, and more than {@code most} nobody can plan in time. */
    record HandsOutOfRange(int hands, int most) implements LineOrderRefusal {
        @Override
        public String code() {
            return "hands-out-of-range";
        }
    }

    /** The person is not one of those who work at benches. */
    record NotAFabricator(BadgeId badge) implements LineOrderRefusal {
        @Override
        public String code() {
            return "not-a-fabricator";
        }
    }
}
