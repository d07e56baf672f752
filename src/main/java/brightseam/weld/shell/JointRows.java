package brightseam.weld.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.SessionId;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.FoldedBefore;
import brightseam.ledger.shell.Projection;
import brightseam.weld.Arc;
import brightseam.weld.Joint;
import brightseam.weld.JointEvent;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table {@code joint_row}: which joints there are, and what is still to be done with their readings. */
final class JointRows implements Projection {

    private static final String INSERT = """
            insert into joint_row (joint_id, kit_id, session_id, welder_id, running, settled)
            values (:joint, :kit, :session, :welder, :running, :settled)
            """;

    private static final String UPDATE = """
            update joint_row
            set session_id = :session, welder_id = :welder, running = :running, settled = :settled
            where joint_id = :joint
            """;

    private final JdbcClient jdbc;
    private final FoldedBefore<Joint, JointEvent> before;

    JointRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.before = new FoldedBefore<>(JointStreams.KIND, jdbc);
    }

    @Override
    public List<String> tables() {
        return List.of("joint_row");
    }

    @Override
    public void apply(Entry entry) {
        if (!JointStreams.isMine(entry)) {
            return;
        }
        Optional<Joint> known = before.before(entry);
        Joint after = JointStreams.KIND.after(known, entry);
        before.remember(entry, after);
        after.lastArc().ifPresent(last -> put(known.flatMap(Joint::lastArc).isEmpty() ? INSERT : UPDATE, after, last));
    }

    List<JointId> ofKit(KitId kit) {
        return joints("kit_id = :value", kit.value());
    }

    List<JointId> ofSession(SessionId session) {
        return joints("session_id = :value", session.value());
    }

    List<JointId> notSettled() {
        return joints("not settled and joint_id <> :value", "");
    }

    Optional<JointId> runningBy(BadgeId welder) {
        return joints("running and welder_id = :value", welder.value()).stream().findFirst();
    }

    private List<JointId> joints(String where, String value) {
        return jdbc.sql("select joint_id from joint_row where " + where + " order by joint_id")
                .param("value", value).query((row, number) -> JointId.parse(row.getString("joint_id"))).list();
    }

    private void put(String sql, Joint joint, Arc last) {
        JdbcClient.StatementSpec put = jdbc.sql(sql)
                .param("joint", joint.id().toString())
                .param("session", last.setting().session().value())
                .param("welder", last.setting().welder().value())
                .param("running", last.isRunning())
                .param("settled", joint.isSettled());
        (sql.equals(INSERT) ? put.param("kit", joint.id().kit().value()) : put).update();
    }
}
