package brightseam.chamber.shell;

import brightseam.chamber.Chamber;
import brightseam.chamber.ChamberCommand;
import brightseam.chamber.ChamberDecider;
import brightseam.chamber.ChamberEvent;
import brightseam.chamber.ChamberItem;
import brightseam.chamber.ChamberRefusal;
import brightseam.chamber.MaterialRules;
import brightseam.chamber.Materials;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.Attempts;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.procedure.Vocabulary;
import brightseam.supply.Supply;
import brightseam.supply.SupplyRefusal;
import brightseam.supply.shell.Supplies;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The welding chambers. States come from the ledger; lists come from rows that follow it. */
@Service
public class Chambers {

    private final EventStream<Chamber, ChamberEvent> streams;
    private final Attempts attempts;
    private final ChamberRows rows;
    private final Supplies supplies;
    private final Vocabulary vocabulary;
    private final Materials materials = MaterialTable.read();

    /** Chambers in {@code ledger}, with their rows in the database of {@code jdbc}. */
    public Chambers(Ledger ledger, JdbcClient jdbc, Supplies supplies, Vocabulary vocabulary) {
        this.streams = new EventStream<>(ledger, ChamberStreams.KIND);
        this.attempts = new Attempts(ledger);
        this.rows = new ChamberRows(jdbc);
        this.supplies = supplies;
        this.vocabulary = vocabulary;
    }

    /** Keeps the rows of the chambers; for the ledger. */
    @Bean
    public static Projection chamberProjection(JdbcClient jdbc) {
        return new ChamberRows(jdbc);
    }

    /** The chamber of {@code station} and the version of its stream; empty where none is registered. */
    public Optional<Versioned<Chamber>> find(StationId station) {
        return streams.load(station);
    }

    /** Every chamber, sorted by its label. */
    public List<Chamber> all() {
        return rows.stations().stream().map(this::find).flatMap(Optional::stream).map(Versioned::state).toList();
    }

    /** The chamber whose transfer lock is {@code lock}. */
    public Optional<Chamber> ofLock(StationId lock) {
        return all().stream().filter(chamber -> chamber.terms().lock().station().equals(lock)).findFirst();
    }

    /** The table of materials. */
    public Materials materials() {
        return materials;
    }

    /** What the last {@code limit} sessions of a chamber used, latest first. */
    public List<ArgonUse> used(StationId station, int limit) {
        return rows.used(station, limit);
    }

    /** What {@code command} would store. Nothing is stored. */
    public Prepared<Chamber> prepare(ChamberCommand command) {
        return streams.prepare(command.station(), chamber -> ChamberDecider.decide(chamber, command, materials));
    }

    /**
     * Carries out {@code command}.
     *
     * @throws IllegalArgumentException for a change-over, which {@link ArgonStore} stores with the sources' own parts
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<Chamber> execute(ChamberCommand command) {
        if (command instanceof ChamberCommand.ChangeOver) {
            throw new IllegalArgumentException("a change-over is stored with the sources");
        }
        return attempts.commit(() -> prepare(command));
    }

    /**
     * What the materials of {@code things} say against taking them into the chamber of {@code station}: each by name,
     * with the reason. Nothing where all may go in.
     */
    public List<Refusal> objections(StationId station, Collection<SupplyId> things) {
        Optional<Chamber> chamber = find(station).map(Versioned::state);
        if (chamber.isEmpty()) {
            return List.of(new ChamberRefusal.ChamberUnknown(station));
        }
        List<Refusal> against = new ArrayList<>();
        for (SupplyId id : things) {
            against.addAll(supplies.find(id).map(Versioned::state)
                    .<List<? extends Refusal>>map(supply ->
                            MaterialRules.objections(item(supply), chamber.get(), materials))
                    .orElseGet(() -> List.of(new SupplyRefusal.SupplyUnknown(id))));
        }
        return against;
    }

    private ChamberItem item(Supply supply) {
        return new ChamberItem(supply.id(), supply.title(), Optional.ofNullable(
                vocabulary.supplies().get(supply.type())).flatMap(Vocabulary.SupplyType::material));
    }
}
