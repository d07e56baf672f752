package brightseam.traveller.shell;

import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.shell.Attempts;
import brightseam.ledger.shell.Ledger;
import brightseam.procedure.Procedure;
import brightseam.traveller.SignedContent;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerCommand;
import brightseam.traveller.TravellerDecider;
import brightseam.traveller.TravellerEvent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionTemplate;

/** Carries commands on one or several travellers out together, and writes down what was refused. */
@Component
class Transactions {

    private static final Logger LOG = LoggerFactory.getLogger(Transactions.class);

    private final Travellers travellers;
    private final Attempts attempts;
    private final Leaving leaving;
    private final TransactionTemplate reading;
    private final ShopClock clock;

    Transactions(Travellers travellers, Leaving leaving, Ledger ledger, PlatformTransactionManager transactions,
            ShopClock clock) {
        this.travellers = travellers;
        this.leaving = leaving;
        this.attempts = new Attempts(ledger);
        this.reading = new TransactionTemplate(transactions);
        this.clock = clock;
    }

    /** Now, as the origin of what {@code actor} does. */
    Origin origin(Actor actor) {
        return new Origin(clock.now(), actor.badge(), actor.tablet(), clock.isDemo(), actor.label());
    }

    /**
     * Decides {@code command} on each of {@code ids}, and stores all of it together with {@code beside}, or nothing.
     * Pieces whose traveller ends by it leave their bin.
     */
    Outcome<List<Traveller>> run(Actor actor, String attempt, Collection<TravellerId> ids,
            BiFunction<Origin, Asked, TravellerCommand> command, Function<Origin, Prepared<?>> beside) {
        return runInTurn(actor, attempt, ids, (origin, card) -> List.of(command.apply(origin, card)), beside);
    }

    /** As {@link #run}, with several commands on each, every one decided on what those before it leave. */
    Outcome<List<Traveller>> runInTurn(Actor actor, String attempt, Collection<TravellerId> ids,
            BiFunction<Origin, Asked, List<TravellerCommand>> commands, Function<Origin, Prepared<?>> beside) {
        return noted(actor, attempt, ids, attempts.commit(() -> onOneConnection(() -> {
            Origin origin = origin(actor);
            Prepared<List<Traveller>> own = Prepared.all(ids.stream()
                    .map(id -> prepareInTurn(id, seen(actor, id), card -> commands.apply(origin, card))).toList());
            Prepared<List<Traveller>> joined = own.with(beside.apply(origin), (results, other) -> results);
            return joined instanceof Prepared.Ready<List<Traveller>> ready
                    ? joined.with(leaving.bins(origin, ready.result()), (results, emptied) -> results) : joined;
        })));
    }

    /** Reads on one connection, borrowed once; where the database does not answer, nothing was stored. */
    private <R> Prepared<R> onOneConnection(Supplier<Prepared<R>> preparing) {
        try {
            return reading.execute(status -> preparing.get());
        } catch (TransactionException | DataAccessException failure) {
            LOG.error("the database does not answer", failure);
            throw new NotStoredException("the database does not answer");
        }
    }

    /** As {@link #run}, with nothing beside it. */
    Outcome<List<Traveller>> run(Actor actor, String attempt, Collection<TravellerId> ids,
            BiFunction<Origin, Asked, TravellerCommand> command) {
        return run(actor, attempt, ids, command, origin -> nothing());
    }

    /** Stores what {@code preparing} answers. */
    <R> Outcome<R> commit(Function<Origin, Prepared<R>> preparing, Actor actor) {
        return attempts.commit(() -> onOneConnection(() -> preparing.apply(origin(actor))));
    }

    /** What a command on one traveller would store. */
    Prepared<Traveller> prepare(TravellerId id, Function<Asked, TravellerCommand> command) {
        return prepareInTurn(id, Optional.empty(), asked -> List.of(command.apply(asked)));
    }

    private static Optional<String> seen(Actor actor, TravellerId id) {
        return Optional.ofNullable(actor.seen().get(id));
    }

    private Prepared<Traveller> prepareInTurn(
            TravellerId id, Optional<String> seen, Function<Asked, List<TravellerCommand>> commands) {
        return travellers.streams().prepare(id, state -> state
                .map(traveller -> asSeen(id, seen,
                        decide(new Asked(traveller, travellers.procedure(traveller)), commands)))
                .orElseGet(() -> Decision.refused(List.of(new ShopRefusal.TravellerUnknown(id)))));
    }

    /** Refuses a signature under something else than what the signer had read. */
    static Decision<TravellerEvent> asSeen(
            TravellerId id, Optional<String> seen, Decision<TravellerEvent> decision) {
        boolean other = decision instanceof Decision.Accepted<TravellerEvent>(List<TravellerEvent> events)
                && SignedContent.isOtherThan(seen, events);
        return other ? Decision.refused(List.of(new ShopRefusal.ContentChanged(id))) : decision;
    }

    static Prepared<Void> nothing() {
        return new Prepared.Ready<>(List.of(), null);
    }

    /** Writes down on each of {@code ids} that {@code attempt} was refused. */
    void note(Actor actor, String attempt, Collection<TravellerId> ids, List<Refusal> refusals) {
        try {
            attempts.commit(() -> onOneConnection(() -> {
                Origin origin = origin(actor);
                return Prepared.all(ids.stream().filter(id -> travellers.find(id).isPresent())
                        .map(id -> prepare(id, card -> new TravellerCommand.NoteRefusal(origin, attempt, refusals)))
                        .toList());
            }));
        } catch (NotStoredException lost) {
            LOG.warn("a refused attempt ({}) could not be written down: {}", attempt, lost.getMessage());
        }
    }

    <R> Outcome<R> noted(Actor actor, String attempt, Collection<TravellerId> ids, Outcome<R> outcome) {
        if (outcome instanceof Outcome.Refused<R> refused) {
            note(actor, attempt, ids, refused.refusals());
        }
        return outcome;
    }

    private static Decision<TravellerEvent> decide(Asked asked, Function<Asked, List<TravellerCommand>> commands) {
        List<TravellerEvent> events = new ArrayList<>();
        for (TravellerCommand command : commands.apply(asked)) {
            switch (TravellerDecider.decide(
                    Optional.of(asked.traveller().after(events)), asked.procedure(), command)) {
                case Decision.Refused<TravellerEvent> refused -> {
                    return refused;
                }
                case Decision.Accepted<TravellerEvent> accepted -> events.addAll(accepted.events());
            }
        }
        return Decision.accepted(events);
    }

    /** What a command is asked of: the newest state, and the revision that it follows. */
    record Asked(Traveller traveller, Procedure procedure) {

        TravellerId id() {
            return traveller.id();
        }
    }
}
