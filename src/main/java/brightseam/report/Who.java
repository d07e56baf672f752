package brightseam.report;

import brightseam.kernel.BadgeId;

/** A person by badge and printed name. */
public record Who(BadgeId badge, String name) {

    @Override
    public String toString() {
        return name;
    }
}
