package brightseam.kit.shell;

import brightseam.kernel.Decision;
import brightseam.kernel.KitId;
import brightseam.kit.Kit;
import brightseam.kit.KitCommand;
import brightseam.kit.KitDecider;
import brightseam.kit.KitEvent;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.ledger.shell.StateProjection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The shop's kits. Single states come from the ledger; lists come from rows that follow it. */
@Service
public class Kits {

    private final EventStream<Kit, KitEvent> streams;
    private final KitRows rows;

    /** Kits in {@code ledger}, with their rows in the database of {@code jdbc}. */
    public Kits(Ledger ledger, JdbcClient jdbc) {
        this.streams = new EventStream<>(ledger, KitStreams.KIND);
        this.rows = new KitRows(jdbc);
    }

    /** Keeps the rows of the kits; for the ledger. */
    @Bean
    public static Projection kitProjection(JdbcClient jdbc) {
        return new StateProjection<>(KitStreams.KIND, new KitRows(jdbc));
    }

    /** The kit and the version of its stream, from the ledger. */
    public Optional<Versioned<Kit>> find(KitId kit) {
        return streams.load(kit);
    }

    /** Every kit that is not closed, sorted by label. */
    public List<Kit> open() {
        return rows.open();
    }

    /** What {@code commands} on {@code kit} would store, each decided on what those before it leave. */
    public Prepared<Kit> prepare(KitId kit, List<KitCommand> commands) {
        return streams.prepareInTurn(kit, commands.stream()
                .<Function<Optional<Kit>, Decision<KitEvent>>>map(command -> state -> KitDecider.decide(state, command))
                .toList());
    }

    /**
     * Carries out {@code command}.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<Kit> execute(KitCommand command) {
        return streams.execute(command.kit(), kit -> KitDecider.decide(kit, command));
    }
}
