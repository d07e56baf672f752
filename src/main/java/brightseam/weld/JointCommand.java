package brightseam.weld;

import brightseam.kernel.JointId;
import brightseam.kernel.Origin;
import brightseam.people.Signer;
import java.util.List;
import java.util.Optional;

/** What can be asked of one joint. */
public sealed interface JointCommand {

    /** Which joint. */
    JointId joint();

    /** When, by whom and where. */
    Origin origin();

    /** Begins an arc. */
    record StartArc(JointId joint, ArcPurpose purpose, ArcFacts facts, Origin origin) implements JointCommand {}

    /** Ends the arc that runs, whoever began it: an arc that is out must never be kept running by a rule. */
    record StopArc(JointId joint, Origin origin) implements JointCommand {}

    /** Writes down what the readings over a stretch prove. */
    record TakeEvidence(JointId joint, int run, HotStretch stretch, GasEvidence evidence, Origin origin)
            implements JointCommand {}

    /**
     * Judges a joint.
     *
     * @param verdict what the inspector says
     * @param colours what was seen
     * @param findings what was seen besides
     * @param lighting in what light
     * @param photographsSha256 keys of the stored photographs
     * @param remark what the inspector adds
     */
    record Judge(JointId joint, Verdict verdict, ColoursSeen colours, List<FindingNote> findings, Lighting lighting,
            List<String> photographsSha256, Optional<String> remark, JudgeFacts facts, Signer signer, Origin origin)
            implements JointCommand {
        /** Copies the lists. */
        public Judge {
            findings = List.copyOf(findings);
            photographsSha256 = List.copyOf(photographsSha256);
        }
    }
}
