package brightseam.session;

import brightseam.kernel.Refusal;
import java.util.List;
import java.util.Optional;

/**
 * What has to be known before the chamber is opened.
 *
 * @param joints what stands against it in the joints: hot ones, arcs without an end
 * @param room the room's oxygen monitor in percent by volume; empty where none is registered
 * @param cautionsRead whether the cautions were shown and read
 */
public record OpeningFact(List<Refusal> joints, Optional<MeterFact> room, boolean cautionsRead) {

    /** Copies the list. */
    public OpeningFact {
        joints = List.copyOf(joints);
    }
}
