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
import java.util.ArrayList;
import java.util.List;

/** Remembers what the travellers were told of a joint. */
final class ToldRecord implements JointRecord {
    private final List<String> all = new ArrayList<>();
    private List<Refusal> against = List.of();

    @Override
    public List<Refusal> objections(Origin origin, JointId joint, int run, MapJoint plan, ArcFacts facts) {
        return against;
    }

    @Override
    public Prepared<?> arc(Origin origin, Joint joint) {
        return said("arc " + joint.arcs().size());
    }

    @Override
    public Prepared<?> evidence(Origin origin, Joint joint, Joint.Owed owed, SeriesEvidence proven) {
        return said(owed.stretch() + " " + (proven.isProven() && proven.isWithinLimit()));
    }

    @Override
    public Prepared<?> judged(Origin origin, Joint joint, Signer signer) {
        return said(joint.judgements().getLast().verdict().name());
    }

    private Prepared<?> said(String what) {
        all.add(what);
        return new Prepared.Ready<>(List.of(), what);
    }

    /** What was said, in order. */
    List<String> all() {
        return all;
    }

    /** From now on the travellers have that against every arc. */
    void objects(List<Refusal> objections) {
        against = objections;
    }
}
