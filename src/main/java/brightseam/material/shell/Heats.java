package brightseam.material.shell;

import brightseam.kernel.HeatId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.ledger.shell.StateProjection;
import brightseam.material.Heat;
import brightseam.material.HeatCommand;
import brightseam.material.HeatDecider;
import brightseam.material.HeatEvent;
import java.util.List;
import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The shop's heats. Single states come from the ledger; lists come from rows that follow it. */
@Service
public class Heats {

    private final EventStream<Heat, HeatEvent> streams;
    private final HeatRows rows;

    /** Heats in {@code ledger}, with their rows in the database of {@code jdbc}. */
    public Heats(Ledger ledger, JdbcClient jdbc) {
        this.streams = new EventStream<>(ledger, HeatStreams.KIND);
        this.rows = new HeatRows(jdbc);
    }

    /** Keeps the rows of the heats; for the ledger. */
    @Bean
    public static Projection heatProjection(JdbcClient jdbc) {
        return new StateProjection<>(HeatStreams.KIND, new HeatRows(jdbc));
    }

    /** The heat and the version of its stream, from the ledger. */
    public Optional<Versioned<Heat>> find(HeatId heat) {
        return streams.load(heat);
    }

    /** Every heat, sorted by label. */
    public List<Heat> all() {
        return rows.all();
    }

    /**
     * Carries out {@code command}.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<Heat> execute(HeatCommand command) {
        return streams.execute(command.heat(), heat -> HeatDecider.decide(heat, command));
    }
}
