package brightseam.weld.shell;

import brightseam.kernel.JointId;
import brightseam.kernel.Origin;
import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.shell.Ledger;
import brightseam.weld.ArcPurpose;
import brightseam.weld.ArcSetting;
import brightseam.weld.JointEvent;
import brightseam.weld.MapJoint;
import java.util.List;

/** Writes what happened to a joint straight into a ledger, for tests of what is shown of it. */
public final class JointStory {

    private final Ledger ledger;
    private final JointId joint;

    /** The story of {@code joint} in {@code ledger}. */
    public JointStory(Ledger ledger, JointId joint) {
        this.ledger = ledger;
        this.joint = joint;
    }

    /** Its first arc begins. */
    public void begins(Origin origin, MapJoint plan, ArcSetting setting) {
        store(new JointEvent.Begun(origin, joint, 1, plan),
                new JointEvent.ArcStarted(origin, joint, 1, ArcPurpose.WELD, setting));
    }

    /** The arc ends. */
    public void ends(Origin origin) {
        store(new JointEvent.ArcStopped(origin, joint, 1));
    }

    private void store(JointEvent... events) {
        var stream = JointStreams.KIND.stream(joint);
        Appended appended = ledger.append(List.of(
                new Append(stream, ledger.version(stream), JointStreams.KIND.write(List.of(events)))));
        if (!(appended instanceof Appended.Stored)) {
            throw new AssertionError(appended);
        }
    }
}
