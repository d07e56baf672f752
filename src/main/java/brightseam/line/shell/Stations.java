package brightseam.line.shell;

import brightseam.kernel.StationId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.ledger.shell.Remembered;
import brightseam.ledger.shell.StateProjection;
import brightseam.line.Station;
import brightseam.line.StationCommand;
import brightseam.line.StationDecider;
import brightseam.line.StationEvent;
import java.util.List;
import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The shop's stations. Single states come from the ledger; lists come from rows that follow it. */
@Service
public class Stations {

    private final EventStream<Station, StationEvent> streams;
    private final Remembered<List<Station>> all;

    /** Stations in {@code ledger}, with their rows in the database of {@code jdbc}. */
    public Stations(Ledger ledger, JdbcClient jdbc) {
        this.streams = new EventStream<>(ledger, StationStreams.KIND);
        StationRows rows = new StationRows(jdbc);
        this.all = new Remembered<>(ledger, StationStreams.KIND.family(), () -> List.copyOf(rows.all()));
    }

    /** Keeps the rows of the stations; for the ledger. */
    @Bean
    public static Projection stationProjection(JdbcClient jdbc) {
        return new StateProjection<>(StationStreams.KIND, new StationRows(jdbc));
    }

    /** The station and the version of its stream, from the ledger. */
    public Optional<Versioned<Station>> find(StationId station) {
        return streams.load(station);
    }

    /** Every station, those out of use too, sorted by label. */
    public List<Station> all() {
        return all.get();
    }

    /**
     * Carries out {@code command}.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<Station> execute(StationCommand command) {
        return streams.execute(command.station(), station -> StationDecider.decide(station, command));
    }
}
