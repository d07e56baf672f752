package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import java.util.List;

/** What happens to a person. No event carries a PIN or anything made from one. */
public sealed interface PersonEvent {

    /** When, by whom and on which tablet. */
    Origin origin();

    /** Whom it happened to. */
    BadgeId badge();

    /** The person joined the shop. */
    record PersonRegistered(Origin origin, BadgeId badge, String name, List<Role> roles) implements PersonEvent {}

    /** The person's roles are now {@code roles}, and no others. */
    record RolesChanged(Origin origin, BadgeId badge, List<Role> roles) implements PersonEvent {}

    /** What happens to a stamp; its number is never issued again, whatever it is. */
    sealed interface OfStamp extends PersonEvent {

        /** Its number. */
        String stamp();
    }

    /** The person was handed the stamp of this number. */
    record StampIssued(Origin origin, BadgeId badge, String stamp) implements OfStamp {}

    /** The right to use the stamp ended; that it lies in the office again is said by {@link StampReturned}. */
    record StampWithdrawn(Origin origin, BadgeId badge, String stamp, String reason) implements OfStamp {}

    /** The stamp was given back, or found again, and is kept. */
    record StampReturned(Origin origin, BadgeId badge, String stamp, String reason) implements OfStamp {}

    /** Nobody knows where the stamp is. */
    record StampLost(Origin origin, BadgeId badge, String stamp, String reason) implements OfStamp {}

    /** The stamp was made unusable for good. */
    record StampVoided(Origin origin, BadgeId badge, String stamp, String reason) implements OfStamp {}

    /** The person is qualified; replaces an earlier qualification for the same word. */
    record QualificationGranted(Origin origin, BadgeId badge, Qualification qualification) implements PersonEvent {}

    /** The person left; what they signed stays. */
    record PersonDeactivated(Origin origin, BadgeId badge, String reason) implements PersonEvent {}

    /** The person chose a PIN; before {@link FirstPinSet} was known, an administrator did as {@code origin} says. */
    record PinSet(Origin origin, BadgeId badge) implements PersonEvent {}

    /** Somebody else chose a PIN for the person, which serves for nothing but choosing another one. */
    record FirstPinSet(Origin origin, BadgeId badge) implements PersonEvent {}

    /** A wrong PIN for {@code purpose}; {@code failures} in a row, this one counted. Who tried is not known. */
    record PinRefused(Origin origin, BadgeId badge, String purpose, int failures) implements PersonEvent {}

    /** Too many wrong PINs in a row closed the badge. */
    record PinLocked(Origin origin, BadgeId badge, int failures) implements PersonEvent {}

    /** An administrator opened the badge again. */
    record PinUnlocked(Origin origin, BadgeId badge) implements PersonEvent {}

    /** The person signed in with badge and PIN on the tablet of {@code origin}. */
    record SignedIn(Origin origin, BadgeId badge) implements PersonEvent {}
}
