package brightseam.weld.shell;

import brightseam.device.SeriesEvidence;
import brightseam.kernel.JointId;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.ledger.Prepared;
import brightseam.people.Signer;
import brightseam.weld.ArcFacts;
import brightseam.weld.Joint;
import brightseam.weld.MapJoint;
import java.util.List;

/** What the records of a joint's travellers say of it, stored in one append with the joint's own. */
interface JointRecord {

    /** What those records have against an arc, the next one of {@code run} runs. */
    List<Refusal> objections(Origin origin, JointId joint, int run, MapJoint plan, ArcFacts facts);

    /** Says that the arc which {@code joint} ends with was begun. */
    Prepared<?> arc(Origin origin, Joint joint);

    /** Says what {@code proven} means for {@code owed}. */
    Prepared<?> evidence(Origin origin, Joint joint, Joint.Owed owed, SeriesEvidence proven);

    /** Says what the judgement that {@code joint} ends with was. */
    Prepared<?> judged(Origin origin, Joint joint, Signer signer);
}
