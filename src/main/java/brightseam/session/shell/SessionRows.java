package brightseam.session.shell;

import brightseam.kernel.KitId;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.FoldedBefore;
import brightseam.ledger.shell.Projection;
import brightseam.session.ChamberSession;
import brightseam.session.Placed;
import brightseam.session.SessionEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Which sessions there are and what is in them: {@code session_row}, {@code session_item_row}. */
final class SessionRows implements Projection {

    private final JdbcClient jdbc;
    private final FoldedBefore<ChamberSession, SessionEvent> folded;

    SessionRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.folded = new FoldedBefore<>(SessionStreams.KIND, jdbc);
    }

    @Override
    public List<String> tables() {
        return List.of("session_row", "session_item_row");
    }

    @Override
    public void apply(Entry entry) {
        if (!SessionStreams.isMine(entry)) {
            return;
        }
        Optional<ChamberSession> before = folded.before(entry);
        ChamberSession after = SessionStreams.KIND.after(before, entry);
        folded.remember(entry, after);
        if (before.isEmpty()) {
            insert(after, entry.position());
        } else if (before.get().phase() != after.phase()) {
            jdbc.sql("update session_row set phase = :phase, is_over = :over where session_id = :session")
                    .param("phase", after.phase().name()).param("over", after.phase().isOver())
                    .param("session", after.id().value()).update();
        }
        items(before.map(SessionRows::labels).orElse(Set.of()), after);
    }

    /** The sessions that are not over, oldest first. */
    List<SessionId> open() {
        return ids(jdbc.sql("select session_id from session_row where not is_over order by position"));
    }

    /** The sessions of a kit, latest first. */
    List<SessionId> ofKit(KitId kit) {
        return ids(jdbc.sql("select session_id from session_row where kit_id = :kit order by position desc")
                .param("kit", kit.value()));
    }

    /** The sessions that are over, latest first. */
    List<SessionId> over(int limit) {
        return ids(jdbc.sql("""
                select session_id from session_row where is_over order by position desc fetch first :limit rows only
                """).param("limit", limit));
    }

    Optional<SessionId> openOfKit(KitId kit) {
        return ids(jdbc.sql("select session_id from session_row where kit_id = :kit and not is_over order by position")
                .param("kit", kit.value())).stream().findFirst();
    }

    Optional<SessionId> openAt(StationId chamber) {
        return ids(jdbc.sql("""
                select session_id from session_row where chamber_id = :chamber and not is_over order by position
                """).param("chamber", chamber.value())).stream().findFirst();
    }

    /** The open session that {@code label} is checked in for, or inside of. */
    Optional<SessionId> openWith(String label) {
        return ids(jdbc.sql("""
                select session_row.session_id from session_row
                join session_item_row on session_item_row.session_id = session_row.session_id
                where label = :label and not is_over order by position
                """).param("label", label)).stream().findFirst();
    }

    long lastNumber() {
        return jdbc.sql("select coalesce(max(number), 0) from session_row").query(Long.class).single();
    }

    private static List<SessionId> ids(JdbcClient.StatementSpec select) {
        return select.query(String.class).list().stream().map(SessionId::new).toList();
    }

    private void insert(ChamberSession first, long position) {
        jdbc.sql("""
                        insert into session_row (session_id, number, kit_id, chamber_id, phase, is_over, position)
                        values (:session, :number, :kit, :chamber, :phase, false, :position)
                        """)
                .param("session", first.id().value())
                .param("number", number(first.id()).orElse(null))
                .param("kit", first.kit().value())
                .param("chamber", first.chamber().value())
                .param("phase", first.phase().name())
                .param("position", position)
                .update();
    }

    private void items(Set<String> before, ChamberSession session) {
        Set<String> after = labels(session);
        after.stream().filter(label -> !before.contains(label)).sorted().forEach(label -> jdbc.sql(
                        "insert into session_item_row (session_id, label) values (:session, :label)")
                .param("session", session.id().value()).param("label", label).update());
        before.stream().filter(label -> !after.contains(label)).sorted().forEach(label -> jdbc.sql(
                        "delete from session_item_row where session_id = :session and label = :label")
                .param("session", session.id().value()).param("label", label).update());
    }

    private static Set<String> labels(ChamberSession session) {
        return session.items().stream().filter(one -> one.where() != Placed.Where.PASSED_OUT)
                .map(one -> one.item().label()).collect(Collectors.toSet());
    }

    private static Optional<Long> number(SessionId id) {
        return id.value().matches("CS-\\d{1,12}") ? Optional.of(Long.valueOf(id.value().substring(3)))
                : Optional.empty();
    }
}
