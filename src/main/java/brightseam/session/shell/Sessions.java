package brightseam.session.shell;

import brightseam.kernel.Decision;
import brightseam.kernel.KitId;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.session.ChamberSession;
import brightseam.session.SessionCommand;
import brightseam.session.SessionDecider;
import brightseam.session.SessionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Reads chamber sessions: single ones from the ledger, lists by rows that follow it. */
@Service
public final class Sessions {

    private final EventStream<ChamberSession, SessionEvent> streams;
    private final SessionRows rows;

    /** Sessions in {@code ledger}, with their rows in the database of {@code jdbc}. */
    public Sessions(Ledger ledger, JdbcClient jdbc) {
        this.streams = new EventStream<>(ledger, SessionStreams.KIND);
        this.rows = new SessionRows(jdbc);
    }

    /** Keeps the rows of the sessions; for the ledger. */
    @Bean
    public static Projection sessionProjection(JdbcClient jdbc) {
        return new SessionRows(jdbc);
    }

    /** The session and the version of its stream, from the ledger. */
    public Optional<Versioned<ChamberSession>> find(SessionId session) {
        return streams.load(session);
    }

    /** Every session that is not over, oldest first. */
    public List<ChamberSession> open() {
        return states(rows.open());
    }

    /** Every session of a kit, latest first. */
    public List<ChamberSession> ofKit(KitId kit) {
        return states(rows.ofKit(kit));
    }

    /** The last {@code limit} sessions that are over, latest first. */
    public List<ChamberSession> over(int limit) {
        return states(rows.over(limit));
    }

    /** The session that is open at {@code chamber}. */
    public Optional<ChamberSession> openAt(StationId chamber) {
        return rows.openAt(chamber).flatMap(this::find).map(Versioned::state);
    }

    /** The session that is open for {@code kit}. */
    public Optional<ChamberSession> openOfKit(KitId kit) {
        return rows.openOfKit(kit).flatMap(this::find).map(Versioned::state);
    }

    /** The open session that {@code label} is checked in for, or inside of. */
    public Optional<SessionId> openWith(String label) {
        return rows.openWith(label);
    }

    /** The open session that the pieces of {@code traveller} are checked in for, or inside of. */
    public Optional<ChamberSession> openWith(TravellerId traveller) {
        return openWith(traveller.value()).flatMap(this::find).map(Versioned::state);
    }

    /** The next free name. */
    SessionId next() {
        return new SessionId(String.format(Locale.ROOT, "CS-%04d", rows.lastNumber() + 1));
    }

    /** What {@code commands} on one session would store in one append, each decided on what those before it leave. */
    Prepared<ChamberSession> prepare(SessionId session, List<? extends SessionCommand> commands) {
        List<Function<Optional<ChamberSession>, Decision<SessionEvent>>> deciders = new ArrayList<>();
        commands.forEach(command -> deciders.add(state -> SessionDecider.decide(state, command)));
        return streams.prepareInTurn(session, deciders);
    }

    private List<ChamberSession> states(List<SessionId> ids) {
        return ids.stream().map(this::find).flatMap(Optional::stream).map(Versioned::state).toList();
    }
}
