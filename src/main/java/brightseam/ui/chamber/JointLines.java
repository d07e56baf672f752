package brightseam.ui.chamber;

import brightseam.kernel.SessionId;
import brightseam.ui.parts.Mark;
import brightseam.weld.Joint;
import brightseam.weld.JointStanding;
import brightseam.weld.WeldMap;
import brightseam.weld.shell.JointView;
import java.util.List;
import java.util.Optional;

/** Joints as lines of a list and as marks on the map. */
final class JointLines {

    private JointLines() {}

    static JointLine line(SessionId session, JointView joint) {
        return new JointLine(joint.id().number(), joint.plan().description(), state(joint), mark(joint),
                "chamber/" + session + "/joint/" + joint.id().number());
    }

    static String state(JointView joint) {
        String standing = switch (joint.standing()) {
            case PLANNED -> "to weld";
            case ARC_RUNNING -> "arc burns";
            case COOLING -> "cooling";
            case SETTLING -> "readings come in";
            case TACKED -> "tacked, to weld";
            case WELDED -> "welded, to be judged";
            case REJECTED -> "rejected";
            case ACCEPTED -> "accepted";
        };
        return joint.isDoubtful() ? standing + ", nonconformance" : standing;
    }

    static Mark.Kind mark(JointView joint) {
        if (joint.isDoubtful() && !joint.standing().isHot()) {
            return Mark.Kind.STOPPED;
        }
        return switch (joint.standing()) {
            case PLANNED -> Mark.Kind.TO_COME;
            case ARC_RUNNING -> Mark.Kind.NOW;
            case COOLING -> Mark.Kind.COOLING;
            case SETTLING, TACKED, WELDED -> Mark.Kind.HALF;
            case REJECTED -> Mark.Kind.REFUSED;
            case ACCEPTED -> Mark.Kind.SIGNED;
        };
    }

    static boolean isWelded(JointView joint) {
        return joint.joint().filter(Joint::isWelded).isPresent();
    }

    /** How long it still has to stay in the argon. */
    static Optional<Doing.Running> cooling(JointView joint) {
        return joint.standing() != JointStanding.COOLING ? Optional.empty()
                : joint.joint().flatMap(Joint::lastArc).flatMap(arc -> arc.stoppedAt()).map(stopped ->
                        new Doing.Running(joint.id().number() + " cools in argon", stopped,
                                joint.plan().cooling().hold(), "it may leave the argon."));
    }

    /** The map's picture with its marks; empty where it has none. */
    static Optional<MapPicture> picture(Optional<WeldMap> map, List<JointView> joints) {
        return map.flatMap(WeldMap::current).flatMap(issue -> issue.sheet().pictureSha256()).map(sha256 ->
                new MapPicture("picture/" + sha256, joints.stream().flatMap(joint -> joint.plan().spot().map(spot ->
                        new MapPicture.Spot(joint.id().number(), spot.x(), spot.y(),
                                mark(joint))).stream()).toList()));
    }
}
