package brightseam.line.shell;

import brightseam.kernel.Decision;
import brightseam.kernel.StationId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.Attempts;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.line.Bath;
import brightseam.line.BathCommand;
import brightseam.line.BathDecider;
import brightseam.line.BathDeed;
import brightseam.line.BathEvent;
import brightseam.line.BathVerdict;
import brightseam.line.SampleLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The baths in the shop's tanks. States come from the ledger; lists and trends come from rows that follow it. */
@Service
public class Baths {

    private final EventStream<Bath, BathEvent> streams;
    private final Attempts attempts;
    private final BathRows rows;
    private final BathDeedRows deeds;

    /** Baths in {@code ledger}, with their rows in the database of {@code jdbc}. */
    public Baths(Ledger ledger, JdbcClient jdbc) {
        this.streams = new EventStream<>(ledger, BathStreams.KIND);
        this.attempts = new Attempts(ledger);
        this.rows = new BathRows(jdbc);
        this.deeds = new BathDeedRows(jdbc);
    }

    /** Keeps the rows of the analyses; for the ledger. */
    @Bean
    public static Projection bathProjection(JdbcClient jdbc) {
        return new BathRows(jdbc);
    }

    /** Keeps the rows of what was done; for the ledger. */
    @Bean
    public static Projection bathDeedProjection(JdbcClient jdbc) {
        return new BathDeedRows(jdbc);
    }

    /** The bath of {@code station} and the version of its stream; empty where none is registered. */
    public Optional<Versioned<Bath>> find(StationId station) {
        return streams.load(station);
    }

    /** Every bath, sorted by the label of its tank. */
    public List<Bath> all() {
        return rows.stations().stream().map(this::find).flatMap(Optional::stream).map(Versioned::state).toList();
    }

    /** The last {@code limit} analyses of a bath, latest first. */
    public List<SampleLine> samples(StationId station, int limit) {
        return rows.samples(station, limit);
    }

    /** The last {@code limit} things that were done to a bath, latest first. */
    public List<BathDeed> deeds(StationId station, int limit) {
        return deeds.deeds(station, limit);
    }

    /** What {@code commands} on one bath would store in one append, each decided on what those before it leave. */
    public Prepared<Bath> prepare(StationId station, List<? extends BathCommand> commands) {
        List<Function<Optional<Bath>, Decision<BathEvent>>> deciders = new ArrayList<>();
        commands.forEach(command -> deciders.add(bath -> BathDecider.decide(bath, command)));
        return streams.prepareInTurn(station, deciders);
    }

    /**
     * What loads would store that are taken in, in one append. Each command is made from the very state that it is
     * decided on: facts about what is still in the tank are gathered then, and a state that has moved on is refused.
     */
    public Prepared<Bath> takeIn(StationId station, List<Function<Bath, BathCommand.TakeIn>> loads) {
        List<Function<Optional<Bath>, Decision<BathEvent>>> deciders = new ArrayList<>();
        loads.forEach(load -> deciders.add(bath -> BathDecider.decide(bath, load.apply(bath.orElseThrow()))));
        return streams.prepareInTurn(station, deciders);
    }

    /** What {@code command} would store, with the travellers that it makes suspect. */
    public Prepared<BathVerdict> prepare(BathCommand command) {
        List<BathEvent> made = new ArrayList<>();
        return streams.prepare(command.station(), bath -> {
            Decision<BathEvent> decision = BathDecider.decide(bath, command);
            if (decision instanceof Decision.Accepted<BathEvent> accepted) {
                made.addAll(accepted.events());
            }
            return decision;
        }).with(new Prepared.Ready<>(List.of(), made), BathVerdict::of);
    }

    /**
     * Carries out {@code command} by itself. Not for commands that can name suspects: nobody would tell the travellers.
     *
     * @throws IllegalArgumentException for an analysis and for a bath found bad
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<Bath> execute(BathCommand command) {
        return execute(command.station(), List.of(command));
    }

    /** As {@link #execute(BathCommand)}, for {@code commands} on one bath that are stored together or not at all. */
    public Outcome<Bath> execute(StationId station, List<? extends BathCommand> commands) {
        commands.stream().filter(one -> one instanceof BathCommand.EnterAnalysis || one instanceof BathCommand.FindBad)
                .findFirst().ifPresent(naming -> {
                    throw new IllegalArgumentException("names suspects: " + naming.getClass().getSimpleName());
                });
        return attempts.commit(() -> prepare(station, commands));
    }
}
