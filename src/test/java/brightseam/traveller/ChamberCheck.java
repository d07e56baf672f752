package brightseam.traveller;

import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.procedure.Procedure;
import brightseam.procedure.StepKind;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.TravellerEvent.*;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Of a record that is read by {@link RecordCheck}: no arc on pieces outside, in quarantine or over a window that ended;
 * what was out of limits while hot is followed by its nonconformance at once.
 */
final class ChamberCheck {

    private final boolean inSession;
    private final Set<JointId> begunInThisPass = new HashSet<>();
    private final Map<String, Moment> over = new HashMap<>();
    private final Map<String, Set<Integer>> concerned = new HashMap<>();
    private final Set<Cause> due = new HashSet<>();
    private final Set<String> burning = new HashSet<>();
    private boolean entering;
    private boolean inside;
    private boolean windowOpen;

    ChamberCheck(Procedure procedure) {
        this.inSession = procedure.steps().stream()
                .anyMatch(step -> step.kind() == StepKind.PASS_IN && step.inSession());
    }

    /** What {@code event} shows to be wrong. */
    Optional<String> finding(TravellerEvent event, boolean quarantined, Set<Integer> pieces) {
        if (event instanceof NonconformanceOpened opened && due.remove(opened.cause())) {
            return Optional.empty();
        }
        boolean owed = !due.isEmpty();
        due.clear();
        Optional<String> wrong = switch (event) {
            case WindowOpened e -> window(true);
            case WindowEnded e -> window(false);
            case EnteredChamber e -> entered();
            case PassedIn e -> passedIn(quarantined);
            case ReturnedToStep e -> returned(e);
            case ArcBegun e -> begun(e, quarantined, pieces);
            case JointWelded e -> welded(e, pieces);
            case StepSigned e -> e.step().value().equals("weld") && !burning.isEmpty()
                    ? Optional.of("welding signed over a burning arc") : Optional.empty();
            case PiecesSetApart e -> burning.isEmpty() ? Optional.empty() : Optional.of("parted while an arc burns");
            default -> Optional.empty();
        };
        return owed ? Optional.of("out of limits while hot, in silence") : wrong;
    }

    private Optional<String> window(boolean open) {
        windowOpen = open;
        return Optional.empty();
    }

    private Optional<String> passedIn(boolean quarantined) {
        entering = inSession;
        return quarantined || !windowOpen ? Optional.of("into the chamber unclean or stopped") : Optional.empty();
    }

    private Optional<String> entered() {
        inside = entering;
        entering = false;
        return inside ? Optional.empty() : Optional.of("in the chamber without being passed in");
    }

    private Optional<String> returned(ReturnedToStep e) {
        inside &= e.superseded().stream().noneMatch(step -> step.value().equals("pass-in"));
        if (e.superseded().stream().anyMatch(step -> step.value().equals("weld"))) {
            begunInThisPass.clear();
        }
        return Optional.empty();
    }

    private Optional<String> begun(ArcBegun e, boolean quarantined, Set<Integer> pieces) {
        concerned.put(e.arc().joint() + "/" + e.arc().run(), concerned(e.arc().parts(), pieces));
        burning.add(e.arc().joint() + "/" + e.arc().run());
        boolean first = begunInThisPass.add(e.arc().joint());
        return !inside ? Optional.of("an arc on pieces outside")
                : quarantined ? Optional.of("an arc in quarantine")
                : first && !windowOpen ? Optional.of("a joint begun on what is not clean") : Optional.empty();
    }

    /** The lot's own part is the first of the joint's. */
    private static Set<Integer> concerned(List<Joined> parts, Set<Integer> pieces) {
        return Set.copyOf(parts.getFirst().pieces().isEmpty() ? pieces : parts.getFirst().pieces());
    }

    /** Pieces went another way: which joints are left here is not this check's concern. */
    void parted() {
        over.clear();
        concerned.clear();
    }

    private Optional<String> welded(JointWelded e, Set<Integer> pieces) {
        JointFact joint = e.joint();
        begunInThisPass.add(joint.joint());
        burning.remove(joint.joint() + "/" + joint.run());
        boolean lotGone = concerned.getOrDefault(joint.joint() + "/" + joint.run(), concerned(joint.parts(), pieces))
                .stream().noneMatch(pieces::contains);
        Moment before = over.put(joint.joint() + "/" + joint.run(), joint.hotUntil());
        if (joint.exceedsLimit() && !lotGone) {
            due.add(Cause.JOINT_EXCURSION);
        }
        if (!joint.proven() && !lotGone) {
            due.add(Cause.JOINT_UNPROVEN);
        }
        return before == null || before.isBefore(joint.hotUntil()) ? Optional.empty()
                : Optional.of("one stretch written down twice");
    }

    /** What may be written down of a lot that has ended. */
    static boolean mayFollowTheEnd(TravellerEvent event) {
        return event instanceof Dispositioned || event instanceof WindowEnded || event instanceof ReturnedToStep
                || event instanceof LockPassed || event instanceof JointWelded || event instanceof JointJudged
                || event instanceof NonconformanceOpened opened
                && (opened.cause() == Nonconformance.Cause.SUSPECT || opened.cause().isAboutAJoint());
    }
}
