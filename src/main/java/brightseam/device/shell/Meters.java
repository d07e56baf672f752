package brightseam.device.shell;

import brightseam.device.MeterCommand;
import brightseam.device.MeterDecider;
import brightseam.device.MeterEvent;
import brightseam.device.MeterFacts;
import brightseam.device.MeterRecord;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.Attempts;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.line.shell.Stations;
import brightseam.supply.Supply;
import brightseam.supply.shell.Supplies;
import java.util.List;
import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The register of meters. A meter is a gauge of the supply register, which keeps its calibration. */
@Service
public class Meters {

    private final EventStream<MeterRecord, MeterEvent> streams;
    private final Attempts attempts;
    private final MeterRows rows;
    private final Supplies supplies;
    private final Stations stations;

    /** Meters in {@code ledger}, with their rows in the database of {@code jdbc}. */
    public Meters(Ledger ledger, JdbcClient jdbc, Supplies supplies, Stations stations) {
        this.streams = new EventStream<>(ledger, MeterStreams.KIND);
        this.attempts = new Attempts(ledger);
        this.rows = new MeterRows(jdbc);
        this.supplies = supplies;
        this.stations = stations;
    }

    /** Keeps the rows of the meters; for the ledger. */
    @Bean
    public static Projection meterProjection(JdbcClient jdbc) {
        return new MeterRows(jdbc);
    }

    /** The meter and the version of its stream, from the ledger. */
    public Optional<Versioned<MeterRecord>> find(SupplyId meter) {
        return streams.load(meter);
    }

    /** Every meter, those out of use too, sorted by label. */
    public List<MeterRecord> all() {
        return records(rows.all());
    }

    /** The meters in use that look at the gas of {@code station}, sorted by label. */
    public List<MeterRecord> at(StationId station) {
        return records(rows.at(station)).stream().filter(MeterRecord::isInUse).toList();
    }

    /** Whether the calibration of {@code meter} holds on the day of {@code now}; a gauge that is gone has none. */
    public boolean isCalibrated(SupplyId meter, Moment now) {
        return gauge(meter).filter(gauge -> !gauge.isPast(Supplies.day(now))).isPresent();
    }

    /**
     * Carries out {@code command}. Tokens are made by {@link FeedTokens}, typed readings go through {@link Readings}.
     *
     * @throws IllegalArgumentException for a token and for a typed reading
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<MeterRecord> execute(MeterCommand command) {
        if (command instanceof MeterCommand.MakeToken || command instanceof MeterCommand.TypeReading) {
            throw new IllegalArgumentException("not by itself: " + command.getClass().getSimpleName());
        }
        return commit(command);
    }

    /** Carries out any command; see {@link #execute}. */
    Outcome<MeterRecord> commit(MeterCommand command) {
        return attempts.commit(() -> prepare(command));
    }

    /** What {@code command} would store. */
    Prepared<MeterRecord> prepare(MeterCommand command) {
        return streams.prepare(command.meter(), meter -> MeterDecider.decide(meter, command, facts(command)));
    }

    /** The gauge behind a meter, where the supply register has one that is still there. */
    Optional<Supply> gauge(SupplyId meter) {
        return supplies.find(meter).map(Versioned::state)
                .filter(supply -> supply.isGauge() && supply.standing().isUsable());
    }

    private MeterFacts facts(MeterCommand command) {
        Optional<StationId> station = switch (command) {
            case MeterCommand.RegisterMeter c -> Optional.of(c.terms().station());
            case MeterCommand.ChangeTerms c -> Optional.of(c.terms().station());
            case MeterCommand.MakeToken c -> Optional.empty();
            case MeterCommand.TypeReading c -> Optional.empty();
            case MeterCommand.TakeOutOfUse c -> Optional.empty();
            case MeterCommand.PutBackIntoUse c -> Optional.empty();
        };
        return new MeterFacts(gauge(command.meter()).isPresent(),
                station.map(id -> stations.find(id).isPresent()).orElse(true));
    }

    private List<MeterRecord> records(List<SupplyId> ids) {
        return ids.stream().map(this::find).flatMap(Optional::stream).map(Versioned::state).toList();
    }
}
