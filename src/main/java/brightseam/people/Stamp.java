package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.people.PersonEvent.OfStamp;
import brightseam.people.PersonEvent.StampIssued;
import brightseam.people.PersonEvent.StampLost;
import brightseam.people.PersonEvent.StampReturned;
import brightseam.people.PersonEvent.StampVoided;
import brightseam.people.PersonEvent.StampWithdrawn;
import java.util.List;

/**
 * An inspector's stamp with everything that ever happened to it. One number, one holder, once.
 *
 * @param number as it is printed beside a signature
 * @param holder the only person who ever held it
 * @param story what happened, oldest first; the first is that it was issued
 */
public record Stamp(String number, BadgeId holder, List<OfStamp> story) {

    /** What a stamp is. Only a stamp that is held signs. */
    public enum State {
        /** In its holder's hands. */
        HELD,
        /** The right to use it ended; it has not been given back. */
        WITHDRAWN,
        /** Given back and kept in the office. */
        RETURNED,
        /** Nobody knows where it is. */
        LOST,
        /** Made unusable for good. */
        VOIDED
    }

    /** Copies the story and refuses one that does not begin with the issue. */
    public Stamp {
        story = List.copyOf(story);
        if (story.isEmpty() || !(story.getFirst() instanceof StampIssued)) {
            throw new IllegalArgumentException("a stamp's story begins with its issue: " + number);
        }
    }

    /** The stamp that {@code story} tells of. */
    public static Stamp of(List<OfStamp> story) {
        return new Stamp(story.getFirst().stamp(), story.getFirst().badge(), story);
    }

    /** What it is now. */
    public State state() {
        return state(story.getLast());
    }

    /** What a stamp is after {@code event}. */
    public static State state(OfStamp event) {
        return switch (event) {
            case StampIssued issued -> State.HELD;
            case StampWithdrawn withdrawn -> State.WITHDRAWN;
            case StampReturned returned -> State.RETURNED;
            case StampLost lost -> State.LOST;
            case StampVoided voided -> State.VOIDED;
        };
    }

    /** Why {@code event} happened; empty for the issue. */
    public static String reason(OfStamp event) {
        return switch (event) {
            case StampIssued issued -> "";
            case StampWithdrawn withdrawn -> withdrawn.reason();
            case StampReturned returned -> returned.reason();
            case StampLost lost -> lost.reason();
            case StampVoided voided -> voided.reason();
        };
    }

    /** Whether it can come back: a lost one can be found. */
    public boolean mayReturn() {
        return state() == State.HELD || state() == State.WITHDRAWN || state() == State.LOST;
    }

    /** Whether it can be lost: one that lies in the office can be missing there, too. */
    public boolean mayLose() {
        return state() == State.HELD || state() == State.WITHDRAWN || state() == State.RETURNED;
    }

    /** Whether it can be made unusable: only what somebody has in their hands. */
    public boolean mayVoid() {
        return state() == State.HELD || state() == State.WITHDRAWN || state() == State.RETURNED;
    }
}
