package brightseam.procedure.shell;

import brightseam.ledger.Entry;
import brightseam.ledger.shell.Projection;
import brightseam.procedure.ProcedureApproved;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Which revisions are approved, so that a start need not read the whole ledger to learn the procedures' names. */
@Component
final class ProcedureRows implements Projection {

    private final JdbcClient jdbc;

    ProcedureRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("procedure_row");
    }

    @Override
    public void apply(Entry entry) {
        if (!ProcedureStreams.KIND.codec().knows(entry.type())) {
            return;
        }
        ProcedureApproved approved = ProcedureStreams.KIND.codec().read(entry);
        jdbc.sql("""
                insert into procedure_row (procedure_id, version, revision, sha256, approved_by)
                values (:id, :version, :revision, :sha256, :by)
                """)
                .param("id", approved.id())
                .param("version", entry.version())
                .param("revision", approved.revision())
                .param("sha256", approved.sha256())
                .param("by", approved.origin().by().value())
                .update();
    }

    /** The names of all procedures of which a revision was ever approved. */
    Set<String> ids() {
        return new TreeSet<>(jdbc.sql("select distinct procedure_id from procedure_row").query(String.class).list());
    }
}
