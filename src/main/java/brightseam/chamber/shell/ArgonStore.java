package brightseam.chamber.shell;

import brightseam.chamber.ArgonCommand;
import brightseam.chamber.ArgonDecider;
import brightseam.chamber.ArgonEvent;
import brightseam.chamber.ArgonReading;
import brightseam.chamber.ArgonSource;
import brightseam.chamber.Chamber;
import brightseam.chamber.ChamberCommand;
import brightseam.chamber.ChamberRefusal;
import brightseam.kernel.ContactKind;
import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
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
import brightseam.people.Signer;
import brightseam.procedure.Surface;
import brightseam.procedure.Use;
import brightseam.supply.SupplyCommand;
import brightseam.supply.shell.Supplies;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The shop's argon: deliveries, readings, change-overs. Each source is a supply too, under the same label. */
@Service
public class ArgonStore {

    private static final List<Use> FORMS = Arrays.stream(brightseam.chamber.ArgonForm.values())
            .map(form -> new Use(ContactKind.ARGON, form.supplyType(), false)).toList();

    private final EventStream<ArgonSource, ArgonEvent> streams;
    private final Attempts attempts;
    private final ArgonRows rows;
    private final Chambers chambers;
    private final Supplies supplies;

    /** Argon in {@code ledger}, with its rows in the database of {@code jdbc}. */
    public ArgonStore(Ledger ledger, JdbcClient jdbc, Chambers chambers, Supplies supplies) {
        this.streams = new EventStream<>(ledger, ArgonStreams.KIND);
        this.attempts = new Attempts(ledger);
        this.rows = new ArgonRows(jdbc);
        this.chambers = chambers;
        this.supplies = supplies;
    }

    /** Keeps the rows of the argon; for the ledger. */
    @Bean
    public static Projection argonProjection(JdbcClient jdbc) {
        return new ArgonRows(jdbc);
    }

    /** The source and the version of its stream; empty where none was delivered under that label. */
    public Optional<Versioned<ArgonSource>> find(SupplyId supply) {
        return streams.load(supply);
    }

    /** Every source, those that are gone too, sorted by label. */
    public List<ArgonSource> all() {
        return rows.sources().stream().map(this::find).flatMap(Optional::stream).map(Versioned::state).toList();
    }

    /** The last {@code limit} readings of a source, latest first. */
    public List<ArgonReading> readings(SupplyId supply, int limit) {
        return rows.readings(supply, limit);
    }

    /** Which sources fed {@code station} between two times of the elapsed time line. */
    List<ArgonRows.Span> spans(StationId station, long fromMillis, long toMillis) {
        return rows.spans(station, fromMillis, toMillis);
    }

    /**
     * Brings a source into the shop: registers the supply and the argon under one label, in one append.
     *
     * @throws IllegalArgumentException where the two name different labels or the supply is of another form
     */
    public Outcome<ArgonSource> deliver(SupplyCommand.RegisterSupply supply, ArgonCommand.Deliver argon) {
        if (!supply.supply().equals(argon.supply())
                || !supply.type().key().equals(argon.vessel().form().supplyType())) {
            throw new IllegalArgumentException("supply and argon: one label, one form");
        }
        return attempts.commit(() -> supplies.prepare(supply).with(prepare(argon), (registered, source) -> source));
    }

    /**
     * Carries out {@code command}; what is emptied or retired is so as a supply too.
     *
     * @throws IllegalArgumentException for a delivery and for the parts of a change-over, which have their own ways
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<ArgonSource> execute(ArgonCommand command) {
        return attempts.commit(() -> switch (command) {
            case ArgonCommand.EnterReading reading -> prepare(reading);
            case ArgonCommand.DeclareEmpty empty -> alsoOfSupply(empty,
                    new SupplyCommand.UseUp(empty.supply(), empty.origin()));
            case ArgonCommand.Retire retire -> alsoOfSupply(retire,
                    new SupplyCommand.RetireSupply(retire.supply(), retire.reason(), retire.origin()));
            case ArgonCommand.Deliver ignored -> throw new IllegalArgumentException("delivered with its supply");
            case ArgonCommand.Connect ignored -> throw new IllegalArgumentException("part of a change-over");
            case ArgonCommand.Disconnect ignored -> throw new IllegalArgumentException("part of a change-over");
        });
    }

    /** Stores a change-over: chamber, both sources and what was read off them, in one append; or every refusal. */
    public Outcome<Chamber> changeOver(ChangeOverOrder order, Origin origin, Signer signer) {
        return attempts.commit(() -> prepare(order, origin, signer));
    }

    /** What a change-over would store, for a service that joins its own part to it. */
    public Prepared<Chamber> prepare(ChangeOverOrder order, Origin origin, Signer signer) {
        Optional<Chamber> known = chambers.find(order.station()).map(Versioned::state);
        if (known.isEmpty()) {
            return new Prepared.Refused<>(List.of(new ChamberRefusal.ChamberUnknown(order.station())));
        }
        Chamber chamber = known.get();
        Prepared<Chamber> all = chambers.prepare(new ChamberCommand.ChangeOver(
                order.station(), order.off(), order.on(), origin, signer));
        for (Prepared<?> part : parts(order, chamber, origin, signer)) {
            all = all.with(part, (state, ignored) -> state);
        }
        return all instanceof Prepared.Refused<Chamber> refused
                ? new Prepared.Refused<>(refused.refusals().stream().distinct().toList()) : all;
    }

    /** What stands against the supply of {@code source} at {@code now}: date, contamination, gone. */
    public List<Refusal> objections(SupplyId source, Moment now) {
        return List.copyOf(supplies.look(List.of(source), FORMS, Surface.CLEANED, now).objections());
    }

    /** What can be used of all sources: delivered, not empty, and nothing against their supplies at {@code now}. */
    public List<ArgonSource> usable(Moment now) {
        return all().stream().filter(ArgonSource::isUsable)
                .filter(source -> objections(source.id(), now).isEmpty()).toList();
    }

    private List<Prepared<?>> parts(ChangeOverOrder order, Chamber chamber, Origin origin, Signer signer) {
        List<Prepared<?>> parts = new ArrayList<>();
        order.off().ifPresent(off -> {
            List<ArgonCommand> turn = new ArrayList<>(reading(off, order.offReading(), origin));
            turn.add(new ArgonCommand.Disconnect(off, chamber, origin, signer));
            if (order.offIsEmpty()) {
                turn.add(new ArgonCommand.DeclareEmpty(off, origin));
                parts.add(supplies.prepare(new SupplyCommand.UseUp(off, origin)));
            }
            parts.add(inTurn(off, turn));
        });
        order.on().ifPresent(on -> {
            List<Refusal> against = objections(on, origin.at());
            parts.add(against.isEmpty() ? inTurn(on, Stream.concat(
                            reading(on, order.onReading(), origin).stream(),
                            Stream.of(new ArgonCommand.Connect(on, chamber, origin, signer))).toList())
                    : new Prepared.Refused<ArgonSource>(against));
        });
        return parts;
    }

    private static List<ArgonCommand> reading(SupplyId supply, Optional<ArgonReading> reading, Origin origin) {
        return reading.<ArgonCommand>map(read -> new ArgonCommand.EnterReading(supply, read, false, origin))
                .map(List::of).orElse(List.of());
    }

    private Prepared<ArgonSource> alsoOfSupply(ArgonCommand command, SupplyCommand supply) {
        return prepare(command).with(supplies.prepare(supply), (source, ignored) -> source);
    }

    private Prepared<ArgonSource> prepare(ArgonCommand command) {
        return inTurn(command.supply(), List.of(command));
    }

    private Prepared<ArgonSource> inTurn(SupplyId supply, List<? extends ArgonCommand> commands) {
        List<Function<Optional<ArgonSource>, Decision<ArgonEvent>>> deciders = new ArrayList<>();
        commands.forEach(command -> deciders.add(source -> ArgonDecider.decide(source, command)));
        return streams.prepareInTurn(supply, deciders);
    }
}
