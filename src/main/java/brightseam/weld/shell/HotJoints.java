package brightseam.weld.shell;

import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Versioned;
import brightseam.session.shell.JointsInside;
import brightseam.weld.Joint;
import brightseam.weld.JointsRefusal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Says which joints would come to air hot. */
@Component
class HotJoints implements JointsInside {

    private final Joints joints;
    private final JointRows rows;

    HotJoints(Joints joints, JdbcClient jdbc) {
        this.joints = joints;
        this.rows = new JointRows(jdbc);
    }

    @Override
    public List<Refusal> objections(SessionId session, Collection<TravellerId> travellers, Moment now) {
        List<Joint> mine = rows.ofSession(session).stream().map(joints::find).flatMap(Optional::stream)
                .map(Versioned::state).filter(joint -> holds(joint, travellers)).toList();
        List<String> running = names(mine.stream().filter(joint -> joint.running().isPresent()).toList());
        List<Joint> hot = mine.stream().filter(joint -> joint.coolAt().filter(now::isBefore).isPresent()).toList();
        List<Refusal> against = new ArrayList<>();
        if (!running.isEmpty()) {
            against.add(new JointsRefusal.ArcsRunning(running));
        }
        hot.stream().flatMap(joint -> joint.coolAt().stream()).max(Comparator.naturalOrder()).ifPresent(cool ->
                against.add(new JointsRefusal.JointsHot(names(hot), cool)));
        return against;
    }

    private static boolean holds(Joint joint, Collection<TravellerId> travellers) {
        return joint.arcs().stream().flatMap(arc -> arc.setting().travellers().stream())
                .anyMatch(travellers::contains);
    }

    private static List<String> names(List<Joint> joints) {
        return joints.stream().map(Joint::id).map(JointId::toString).sorted().toList();
    }
}
