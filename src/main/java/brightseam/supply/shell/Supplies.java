package brightseam.supply.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.ledger.shell.StateProjection;
import brightseam.procedure.Surface;
import brightseam.procedure.Use;
import brightseam.supply.Fitness;
import brightseam.supply.Scanned;
import brightseam.supply.Supply;
import brightseam.supply.SupplyCommand;
import brightseam.supply.SupplyDecider;
import brightseam.supply.SupplyEvent;
import brightseam.supply.SupplyRefusal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The shop's supplies. Single states come from the ledger; lists come from rows that follow it. */
@Service
public class Supplies {

    private final EventStream<Supply, SupplyEvent> streams;
    private final SupplyRows rows;

    /** Supplies in {@code ledger}, with their rows in the database of {@code jdbc}. */
    public Supplies(Ledger ledger, JdbcClient jdbc) {
        this.streams = new EventStream<>(ledger, SupplyStreams.KIND);
        this.rows = new SupplyRows(jdbc);
    }

    /** Keeps the rows of the supplies; for the ledger. */
    @Bean
    public static Projection supplyProjection(JdbcClient jdbc) {
        return new StateProjection<>(SupplyStreams.KIND, new SupplyRows(jdbc));
    }

    /** The supply and the version of its stream, from the ledger. */
    public Optional<Versioned<Supply>> find(SupplyId supply) {
        return streams.load(supply);
    }

    /** Every supply, those that are gone too, sorted by label. */
    public List<Supply> all() {
        return rows.all();
    }

    /** The day on the shop's wall at {@code now}. */
    public static LocalDate day(Moment now) {
        return LocalDate.ofInstant(now.wall(), ZoneId.systemDefault());
    }

    /** What {@code command} would store, for a service that joins it with its own part in one append. */
    public Prepared<Supply> prepare(SupplyCommand command) {
        LocalDate today = day(command.origin().at());
        return streams.prepare(command.supply(), supply -> SupplyDecider.decide(supply, command, today));
    }

    /**
     * Carries out {@code command}.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<Supply> execute(SupplyCommand command) {
        LocalDate today = day(command.origin().at());
        return streams.execute(command.supply(), supply -> SupplyDecider.decide(supply, command, today));
    }

    /**
     * Looks at what was scanned before a step that asks for {@code asked}.
     *
     * @param surface what the pieces are like at the step
     * @param now by which dates are over or not
     */
    public Scanned look(Collection<SupplyId> scanned, List<Use> asked, Surface surface, Moment now) {
        List<Supply> known = new ArrayList<>();
        List<Refusal> objections = new ArrayList<>();
        for (SupplyId id : scanned) {
            Optional<Supply> found = find(id).map(Versioned::state);
            found.ifPresent(known::add);
            objections.addAll(found.map(supply -> Fitness.objections(supply, asked, surface, day(now)))
                    .orElseGet(() -> List.of(new SupplyRefusal.SupplyUnknown(id))));
        }
        return new Scanned(known, objections);
    }
}
