package brightseam.bins.shell;

import brightseam.bins.Bin;
import brightseam.bins.BinCommand;
import brightseam.bins.BinDecider;
import brightseam.bins.BinEvent;
import brightseam.kernel.BinId;
import brightseam.kernel.Decision;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.ledger.shell.StateProjection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The shop's bins. Single states come from the ledger; lists and searches come from rows that follow it. */
@Service
public class Bins {

    private final EventStream<Bin, BinEvent> streams;
    private final BinRows rows;

    /** Bins in {@code ledger}, with their rows in the database of {@code jdbc}. */
    public Bins(Ledger ledger, JdbcClient jdbc) {
        this.streams = new EventStream<>(ledger, BinStreams.KIND);
        this.rows = new BinRows(jdbc);
    }

    /** Keeps the rows of the bins; for the ledger. */
    @Bean
    public static Projection binProjection(JdbcClient jdbc) {
        return new StateProjection<>(BinStreams.KIND, new BinRows(jdbc));
    }

    /** The bin and the version of its stream, from the ledger. */
    public Optional<Versioned<Bin>> find(BinId bin) {
        return streams.load(bin);
    }

    /** Every bin, retired ones too, sorted by label. */
    public List<Bin> all() {
        return rows.all();
    }

    /** The bin that {@code traveller} is in; the last that it was put into, should there be two. */
    public Optional<BinId> whereIs(TravellerId traveller) {
        return rows.whereIs(traveller);
    }

    /** What is in {@code bin}; empty where there is no such bin. */
    public SortedSet<TravellerId> inside(BinId bin) {
        return rows.find(bin.value()).map(Bin::inside).orElseGet(TreeSet::new);
    }

    /** What {@code command} would store, for a caller that stores it together with its own events. */
    public Prepared<Bin> prepare(BinCommand command) {
        return streams.prepare(command.bin(), decider(command));
    }

    /**
     * What {@code commands} would store: one append for each bin, its commands decided in turn, such as a move from
     * one bin to another or a whole load into a basket. The results are the bins afterwards, in the order of their
     * first command. For each bin the first refused command ends it; the refusals of all bins are answered.
     */
    public Prepared<List<Bin>> prepare(List<BinCommand> commands) {
        Map<BinId, List<Function<Optional<Bin>, Decision<BinEvent>>>> deciders = commands.stream()
                .collect(Collectors.groupingBy(
                        BinCommand::bin, LinkedHashMap::new, Collectors.mapping(Bins::decider, Collectors.toList())));
        return Prepared.all(deciders.entrySet().stream()
                .map(bin -> streams.prepareInTurn(bin.getKey(), bin.getValue()))
                .toList());
    }

    /**
     * Carries out {@code command} by itself.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<Bin> execute(BinCommand command) {
        return streams.execute(command.bin(), decider(command));
    }

    private static Function<Optional<Bin>, Decision<BinEvent>> decider(BinCommand command) {
        return bin -> BinDecider.decide(bin, command);
    }
}
