package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import java.util.List;

/** What an administrator asks for. The badge in {@code origin} is the one who asks. */
public sealed interface PersonCommand {

    /** When, by whom and on which tablet. */
    Origin origin();

    /** Whom it is about. */
    BadgeId badge();

    /** Take a new person in. */
    record Register(Origin origin, BadgeId badge, String name, List<Role> roles) implements PersonCommand {}

    /** Replace all roles. */
    record ChangeRoles(Origin origin, BadgeId badge, List<Role> roles) implements PersonCommand {}

    /** Hand an inspector the stamp of a number that was never issued before. */
    record IssueStamp(Origin origin, BadgeId badge, String stamp) implements PersonCommand {}

    /** End the right to use the stamp, wherever it lies. */
    record WithdrawStamp(Origin origin, BadgeId badge, String reason) implements PersonCommand {}

    /** Write down that {@code stamp}, which {@code badge} holds or held, was given back or found. */
    record ReturnStamp(Origin origin, BadgeId badge, String stamp, String reason) implements PersonCommand {}

    /** Write down that {@code stamp} is lost; its holder may say so too. */
    record LoseStamp(Origin origin, BadgeId badge, String stamp, String reason) implements PersonCommand {}

    /** Write down that {@code stamp} was made unusable for good. */
    record VoidStamp(Origin origin, BadgeId badge, String stamp, String reason) implements PersonCommand {}

    /** Record a qualification. */
    record GrantQualification(Origin origin, BadgeId badge, Qualification qualification) implements PersonCommand {}

    /** Close the badge for good. */
    record Deactivate(Origin origin, BadgeId badge, String reason) implements PersonCommand {}

    /** Set a PIN: one's own, or as an administrator a first one. The PIN itself is no part of this. */
    record SetPin(Origin origin, BadgeId badge) implements PersonCommand {}

    /** Open a badge that wrong PINs closed. */
    record UnlockPin(Origin origin, BadgeId badge) implements PersonCommand {}
}
