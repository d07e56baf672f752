package brightseam.weld;

import brightseam.kernel.Syntax;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a weld map says: a drawing, its picture and every joint.
 *
 * @param drawing number, revision and title of the drawing that it follows
 * @param pictureSha256 the picture's key among the stored pictures; empty where the map has none
 * @param joints sorted by number, at most {@link #JOINTS_MAX}
 */
public record MapSheet(String drawing, Optional<String> pictureSha256, List<MapJoint> joints) {

    /** The most joints of one map. */
    public static final int JOINTS_MAX = 200;

    /** The longest drawing title. */
    public static final int DRAWING_MAX = 80;

    /** Sorts the joints; refuses a number twice and more than {@link #JOINTS_MAX}. */
    public MapSheet {
        drawing = Syntax.text("drawing", drawing, DRAWING_MAX);
        joints = joints.stream().sorted(Comparator.comparing(MapJoint::number)).toList();
        if (joints.stream().map(MapJoint::number).distinct().count() != joints.size()) {
            throw new IllegalArgumentException("each joint number once");
        }
        if (joints.size() > JOINTS_MAX) {
            throw new IllegalArgumentException("at most " + JOINTS_MAX + " joints");
        }
    }

    /** The joint {@code number}. */
    public Optional<MapJoint> joint(String number) {
        return joints.stream().filter(joint -> joint.number().equals(number)).findFirst();
    }

    /** The same sheet with other joints. */
    public MapSheet with(List<MapJoint> other) {
        return new MapSheet(drawing, pictureSha256, other);
    }

    /** The same sheet with another picture. */
    public MapSheet picturedBy(Optional<String> sha256) {
        return new MapSheet(drawing, sha256, joints);
    }
}
