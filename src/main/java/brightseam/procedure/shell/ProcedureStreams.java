package brightseam.procedure.shell;

import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.procedure.Approvals;
import brightseam.procedure.ProcedureApproved;
import java.util.Map;

/** How approvals are written: one stream for each procedure, such as {@code procedure/TUBE}. */
final class ProcedureStreams {

    /** The names under which events are kept for ever. */
    static final Map<String, Class<? extends ProcedureApproved>> TYPES =
            Map.of("procedure-approved.1", ProcedureApproved.class);

    static final StreamKind<Approvals, ProcedureApproved> KIND =
            new StreamKind<>("procedure", new EventCodec<>(TYPES), Approvals::evolve);

    private ProcedureStreams() {}
}
