package brightseam.ui.chamber;

import brightseam.kernel.Refusal;
import brightseam.procedure.Vocabulary;
import brightseam.session.shell.SessionView;
import brightseam.weld.Arc;
import brightseam.weld.ArcPurpose;
import brightseam.weld.BackSide;
import brightseam.weld.GasEvidence;
import brightseam.weld.Joint;
import brightseam.weld.JointStanding;
import brightseam.weld.MapJoint;
import brightseam.weld.shell.JointView;
import brightseam.words.Wording;
import brightseam.words.Words;
import java.time.Duration;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes the card of one joint: before its arc, while it burns, and after. */
final class JointCards {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private final Vocabulary vocabulary;
    private final Wording wording;
    private final ZoneId zone;
    private final boolean acts;

    JointCards(Vocabulary vocabulary, Wording wording, ZoneId zone, boolean acts) {
        this.vocabulary = vocabulary;
        this.wording = wording;
        this.zone = zone;
        this.acts = acts;
    }

    /**
     * The card.
     *
     * @param against everything that stands against an arc now
     * @param trace the oxygen over the last arc, once its readings are in
     */
    ChamberCard card(SessionView view, JointView joint, ReadyFor ready, List<Refusal> against,
            Optional<Doing.Trace> trace) {
        List<ChamberCard.Way> back = List.of(new ChamberCard.Way("Joints", "chamber/" + view.session().id()));
        Optional<Arc> running = joint.running();
        if (running.isPresent()) {
            String limit = view.gas().limits().map(limits -> Ppm.limit(limits.oxygenPpmMax())).orElse("");
            return new ChamberCard(joint.plan().description(), joint.id().number() + ": arc burns",
                    new Doing.ArcBurns(running.get().run(), running.get().startedAt(), limit), List.of(), List.of());
        }
        boolean settled = joint.standing() == JointStanding.ACCEPTED || joint.standing() == JointStanding.REJECTED;
        if (joint.joint().isPresent() && !ready.again() || settled && !ready.again()) {
            return over(view, joint, trace);
        }
        return ready(joint, ready, against, back);
    }

    private ChamberCard ready(JointView joint, ReadyFor ready, List<Refusal> against, List<ChamberCard.Way> back) {
        MapJoint plan = joint.plan();
        boolean usable = acts && against.isEmpty();
        boolean armed = acts && ready.armed();
        String scan = acts && plan.filler().isPresent() && ready.filler().isEmpty() ? "Scan the filler" : "";
        String under = usable ? "Touch, or press the foot switch, when it starts"
                : against.stream().findFirst().map(refusal -> wording.explain(refusal).reason()).orElse("");
        List<Act> offered = new ArrayList<>();
        if (plan.backSide() != BackSide.OPEN && !ready.backSide()) {
            offered.add(Act.main(Act.Kind.CONFIRM_BACK_SIDE, plan.backSide() == BackSide.PURGED
                    ? "Back side is purged" : "Back side is vented"));
        }
        if (!ready.armed()) {
            offered.add(new Act(Act.Kind.ARM, "", "Arm with PIN", offered.isEmpty(), Optional.empty(),
                    Optional.of(new Act.Confirm("Arm joint " + joint.id().number(), List.of(
                            "From then on the large switch and the foot switch begin and end its arcs."),
                            Stream.of("arc-and-hot-work", "argon-and-air").map(vocabulary.cautions()::get)
                                    .filter(Objects::nonNull).toList(), List.of(), Optional.empty(),
                            Optional.of("Your PIN arms it: you weld this joint")))));
        }
        purposes(joint, ready).forEach(offered::add);
        String over = plan.description() + " · class " + plan.jointClass() + " · " + word(ready.purpose()) + ", arc "
                + (joint.joint().map(known -> known.arcs().size()).orElse(0) + 1);
        return new ChamberCard(over, "Joint " + joint.id().number(), new Doing.ArcReady(armed, usable, under, scan),
                acts ? offered : List.of(), back);
    }

    /** The other purposes that a joint in this state may have an arc for; whether it may begin is asked at the arc. */
    private static List<Act> purposes(JointView joint, ReadyFor ready) {
        return switch (joint.standing()) {
            case PLANNED, TACKED -> ready.purpose() == ArcPurpose.TACK
                    ? List.of(Act.other(Act.Kind.WELD_NEXT, "It is a weld")) : List.of(
                            Act.other(Act.Kind.TACK_FIRST, "It is a tack"));
            case COOLING, SETTLING, WELDED, REJECTED -> ready.purpose() == ArcPurpose.REPAIR
                    ? List.of() : List.of(Act.other(Act.Kind.REPAIR_NEXT, "It is a repair"));
            case ARC_RUNNING, ACCEPTED -> List.of();
        };
    }

    private ChamberCard over(SessionView view, JointView joint, Optional<Doing.Trace> trace) {
        Joint known = joint.joint().orElseThrow();
        Optional<Arc> arc = known.lastArc();
        List<Act> offered = switch (joint.standing()) {
            case ACCEPTED, ARC_RUNNING -> List.of();
            case REJECTED -> List.of(Act.main(Act.Kind.REPAIR_NEXT, "Repair it"));
            case PLANNED, COOLING, SETTLING, TACKED, WELDED ->
                List.of(Act.other(Act.Kind.WELD_NEXT, "Another arc here"));
        };
        boolean rejected = joint.standing() == JointStanding.REJECTED;
        List<ChamberCard.Way> back = List.of(new ChamberCard.Way("To the joints", "chamber/" + view.session().id(),
                !rejected));
        Optional<String> doubt = joint.isDoubtful() ? Optional.of("A nonconformance was opened: the readings do not"
                + " prove that the oxygen stayed within its limit.") : Optional.empty();
        return new ChamberCard(joint.plan().description(), joint.id().number() + ": " + JointLines.state(joint),
                new Doing.ArcOver(arc.map(this::told).orElse(List.of()), doubt, JointLines.cooling(joint), trace),
                acts ? offered : List.of(), back);
    }

    private List<String> told(Arc arc) {
        List<String> lines = new ArrayList<>();
        arc.stoppedAt().ifPresent(stopped -> lines.add("Arc " + arc.run() + ", " + word(arc.purpose()) + ": "
                + Words.duration(stopped.since(arc.startedAt())) + ", from "
                + CLOCK.format(arc.startedAt().wall().atZone(zone)) + " to "
                + CLOCK.format(stopped.wall().atZone(zone)) + ", " + arc.setting().welderName() + "."));
        arc.evidence().ifPresentOrElse(evidence -> lines.addAll(proven("While it burnt", evidence)),
                () -> lines.add("The readings over it come in; the evidence is computed from them."));
        arc.cooling().ifPresent(evidence -> lines.addAll(proven("While it cooled", evidence)));
        return lines;
    }

    private static List<String> proven(String when, GasEvidence evidence) {
        return List.of(when + ", oxygen: " + evidence.oxygenPpmHighest().map(most -> "highest " + Ppm.of(most))
                        .orElse("never read")
                        + evidence.oxygenPpmMean().map(mean -> ", mean " + Ppm.of(mean)).orElse("")
                        + ", " + Ppm.limit(evidence.oxygenPpmLimit()) + ".",
                "Above the limit: " + evidence.secondsAbove().toPlainString() + "\u00a0s. Gaps: "
                        + (evidence.gaps().isEmpty() ? "none" : evidence.gaps().size() + ", longest "
                                + longest(evidence)) + (evidence.proven() ? "." : ". Not proven."));
    }

    private static String longest(GasEvidence evidence) {
        return Words.duration(Duration.ofMillis(evidence.gaps().stream().map(gap -> gap.seconds().movePointRight(3))
                .mapToLong(java.math.BigDecimal::longValue).max().orElse(0)));
    }

    private static String word(ArcPurpose purpose) {
        return switch (purpose) {
            case TACK -> "tack";
            case WELD -> "weld";
            case REPAIR -> "repair";
        };
    }
}
