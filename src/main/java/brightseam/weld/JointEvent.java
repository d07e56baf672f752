package brightseam.weld;

import brightseam.kernel.JointId;
import brightseam.kernel.Origin;

/** What happened to one joint. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface JointEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which joint. */
    JointId joint();

    /** Its first arc is about to be struck; from now on it follows this plan. */
    record Begun(Origin origin, JointId joint, int issue, MapJoint plan) implements JointEvent {}

    /** An arc was begun. */
    record ArcStarted(Origin origin, JointId joint, int run, ArcPurpose purpose, ArcSetting setting)
            implements JointEvent {}

    /** The arc ended. */
    record ArcStopped(Origin origin, JointId joint, int run) implements JointEvent {}

    /** What the readings prove of a stretch was computed. */
    record EvidenceTaken(Origin origin, JointId joint, int run, HotStretch stretch, GasEvidence evidence)
            implements JointEvent {}

    /** An inspector judged it. */
    record Judged(Origin origin, JointId joint, Judgement judgement) implements JointEvent {}
}
