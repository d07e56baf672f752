package brightseam.ui.weld;

import brightseam.ui.parts.Mark;
import brightseam.weld.ArcPurpose;
import brightseam.weld.BackSide;
import brightseam.weld.FillerClass;
import brightseam.weld.JointPart;
import brightseam.weld.JointStanding;
import brightseam.weld.MapJoint;
import brightseam.weld.shell.JointView;
import brightseam.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What the inspector and the lead read about a joint. */
final class JointWords {

    private JointWords() {}

    /** How far it has come. */
    static String standing(JointView joint) {
        String words = switch (joint.standing()) {
            case PLANNED -> "not welded yet";
            case ARC_RUNNING -> "arc runs";
            case COOLING -> "cools in the argon";
            case SETTLING -> "readings come in";
            case TACKED -> "tacked only";
            case WELDED -> "waits for you";
            case REJECTED -> "rejected";
            case ACCEPTED -> "accepted";
        };
        return joint.isDoubtful() ? words + ", oxygen in doubt" : words;
    }

    /** The same as a shape. */
    static Mark.Kind mark(JointView joint) {
        return switch (joint.standing()) {
            case PLANNED -> Mark.Kind.TO_COME;
            case ARC_RUNNING -> Mark.Kind.NOW;
            case COOLING -> Mark.Kind.COOLING;
            case SETTLING, TACKED -> Mark.Kind.HALF;
            case WELDED -> joint.isDoubtful() ? Mark.Kind.CAUTION : Mark.Kind.STAMP;
            case REJECTED -> Mark.Kind.REFUSED;
            case ACCEPTED -> Mark.Kind.SIGNED;
        };
    }

    /** What the map says of it. */
    static String plan(MapJoint plan) {
        return "Class " + plan.jointClass() + "; " + work(plan);
    }

    /** The same without its class. */
    static String work(MapJoint plan) {
        return pieces(plan) + "; back side " + backSide(plan) + "; "
                + plan.filler().map(FillerClass::printed).orElse("no filler") + "; stays in the argon for "
                + Words.duration(plan.cooling().hold()) + " after the arc (" + plan.cooling().until() + ", by "
                + plan.cooling().source() + ")";
    }

    /** Its pieces, as line and piece of the kit. */
    static String pieces(MapJoint plan) {
        return "line/piece " + plan.parts().stream().map(JointPart::toString).collect(Collectors.joining(" and "));
    }

    /** What keeps air from its back side. */
    static String backSide(MapJoint plan) {
        return plan.backSide() == BackSide.OPEN ? "open: " + plan.backSideReason().orElse("")
                : plan.backSide().name().toLowerCase(Locale.ROOT);
    }

    /** What an arc was for. */
    static String purpose(ArcPurpose purpose) {
        return switch (purpose) {
            case TACK -> "Tack";
            case WELD -> "Weld";
            case REPAIR -> "Repair";
        };
    }

    /** How many of {@code joints} wait, as the line under the heading. */
    static String counts(List<JointView> joints) {
        long waiting = joints.stream().filter(joint -> joint.standing() == JointStanding.WELDED).count();
        long accepted = joints.stream().filter(joint -> joint.standing() == JointStanding.ACCEPTED).count();
        return Words.count(joints.size(), "joint", "joints") + ": " + waiting + " to judge, " + accepted
                + " accepted";
    }
}
