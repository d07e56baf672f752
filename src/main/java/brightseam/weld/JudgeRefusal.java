package brightseam.weld;

import brightseam.kernel.BadgeId;
import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.util.List;

/** The rules that stand against a judgement. */
public sealed interface JudgeRefusal extends JointRefusal {

    @Override
    default String code() {
        return switch (this) {
            case NotWelded ignored -> "joint-not-welded";
            case StillHot ignored -> "joint-still-hot";
            case EvidenceAwaited ignored -> "joint-evidence-awaited";
            case JudgedAlready ignored -> "joint-judged-already";
            case JudgeNoInspector ignored -> "joint-judge-no-inspector";
            case JudgeStampMissing ignored -> "joint-judge-stamp-missing";
            case JudgeWelded ignored -> "joint-judge-welded";
            case BrushedBeforeJudged ignored -> "joint-brushed-before-judged";
            case ColourMissing ignored -> "joint-colour-missing";
            case ColourNotKnown ignored -> "joint-colour-not-known";
            case TableNotKnown ignored -> "joint-table-not-known";
            case FindingNotKnown ignored -> "joint-finding-not-known";
            case TooDark ignored -> "joint-too-dark";
            case PhotographsNotStored ignored -> "joint-photographs-not-stored";
            case ColourRejects ignored -> "joint-colour-rejects";
            case FindingRejects ignored -> "joint-finding-rejects";
            case FindingNeverAccepted ignored -> "joint-finding-never-accepted";
            case ConditionUnanswered ignored -> "joint-condition-unanswered";
            case RejectWithoutReason ignored -> "joint-reject-without-reason";
        };
    }

    /** It was not welded. */
    record NotWelded(JointId joint) implements JudgeRefusal {}

    /** It has to stay in the argon. */
    record StillHot(JointId joint, Moment coolAt, Moment attemptedAt) implements JudgeRefusal {}

    /** The readings over it are not all in yet. */
    record EvidenceAwaited(JointId joint) implements JudgeRefusal {}

    /** It was judged as it is. */
    record JudgedAlready(JointId joint, Verdict verdict, String by, Moment at) implements JudgeRefusal {}

    /** Whoever signs is not an inspector. */
    record JudgeNoInspector(JointId joint, BadgeId badge) implements JudgeRefusal {}

    /** The inspector has no stamp. */
    record JudgeStampMissing(JointId joint, BadgeId badge) implements JudgeRefusal {}

    /** Whoever judges welded it. */
    record JudgeWelded(JointId joint, BadgeId badge) implements JudgeRefusal {}

    /** It was brushed, and its colour cannot be judged any more. */
    record BrushedBeforeJudged(JointId joint) implements JudgeRefusal {}

    /** No colour was named. */
    record ColourMissing(JointId joint) implements JudgeRefusal {}

    /** The ladder has no such colour. */
    record ColourNotKnown(JointId joint, List<String> colours) implements JudgeRefusal {
        /** Copies the list. */
        public ColourNotKnown {
            colours = List.copyOf(colours);
        }
    }

    /** The shop has no such table any more. */
    record TableNotKnown(JointId joint, String acceptance) implements JudgeRefusal {}

    /** The table of findings has none such. */
    record FindingNotKnown(JointId joint, List<String> findings) implements JudgeRefusal {
        /** Copies the list. */
        public FindingNotKnown {
            findings = List.copyOf(findings);
        }
    }

    /** There was too little light. */
    record TooDark(JointId joint, BigDecimal lux, BigDecimal luxMin) implements JudgeRefusal {}

    /** Photographs are not stored. */
    record PhotographsNotStored(JointId joint, int missing) implements JudgeRefusal {}

    /** The table rejects these colours; {@code next} says what has to come next. */
    record ColourRejects(JointId joint, List<String> colours, String table, String next) implements JudgeRefusal {
        /** Copies the list. */
        public ColourRejects {
            colours = List.copyOf(colours);
        }
    }

    /** The finding rejects it; {@code next} says what has to come next. */
    record FindingRejects(JointId joint, String finding, String next) implements JudgeRefusal {}

    /** The finding rejects it, and no disposition can let it stay. */
    record FindingNeverAccepted(JointId joint, String finding, String next) implements JudgeRefusal {}

    /** It may stay only where something holds, and the inspector has not said that it does. */
    record ConditionUnanswered(JointId joint, String next) implements JudgeRefusal {}

    /** Nothing rejects it and the inspector has not said what does. */
    record RejectWithoutReason(JointId joint) implements JudgeRefusal {}
}
