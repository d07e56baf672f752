package brightseam.traveller;

import brightseam.kernel.BadgeId;
import brightseam.kernel.JointId;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.Syntax;
import brightseam.kernel.TravellerId;
import java.util.List;

/**
 * An arc that begins at a joint, as the travellers welded there are told of it.
 *
 * @param joint which joint
 * @param session the chamber session
 * @param chamber the chamber's station
 * @param run 1 for the joint's first arc, 2 after a repair or a stop, and so on
 * @param parts every traveller whose pieces are welded there
 * @param filler the filler's type, such as {@code ERTi-9}, or {@code none}
 * @param welder whose badge
 * @param backSide how the back side is kept from air: {@code purged} or {@code vented}
 * @param contacts what touches the joint: filler, argon, meters, gloves, as their registers have them
 * @param simulated whether any reading came from the simulator
 */
public record ArcFact(JointId joint, SessionId session, StationId chamber, int run, List<Joined> parts, String filler,
        BadgeId welder, String backSide, List<Contact> contacts, boolean simulated) {

    private static final int WORD_LENGTH_MAX = 40;

    /** Refuses a run below 1, missing words and a joint of nothing. */
    public ArcFact {
        filler = Syntax.text("filler", filler, WORD_LENGTH_MAX);
        backSide = Syntax.text("back side", backSide, WORD_LENGTH_MAX);
        parts = List.copyOf(parts);
        contacts = List.copyOf(contacts);
        if (run < 1 || parts.isEmpty()) {
            throw new IllegalArgumentException("a joint has a run from 1 and at least one part");
        }
    }

    /** The travellers whose pieces are welded there, sorted. */
    public List<TravellerId> travellers() {
        return parts.stream().map(Joined::traveller).distinct().sorted().toList();
    }
}
