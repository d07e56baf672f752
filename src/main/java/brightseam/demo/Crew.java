package brightseam.demo;

import brightseam.kernel.Origin;
import brightseam.kernel.shell.DemoClock;
import brightseam.ledger.Outcome;
import brightseam.people.Recognition;
import brightseam.people.Signer;
import brightseam.people.shell.Authenticator;
import brightseam.traveller.shell.Actor;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** The demo's people at work: who acts where, and their signatures, for which each gives badge and PIN once. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
public final class Crew {

    private final Authenticator authenticator;
    private final DemoClock clock;
    private final Map<DemoPerson, Signer> signers = new ConcurrentHashMap<>();

    Crew(Authenticator authenticator, DemoClock clock) {
        this.authenticator = authenticator;
        this.clock = clock;
    }

    /** {@code person} at the tablet that person usually has. */
    public Actor actor(DemoPerson person) {
        return new Actor(person.badge(), tablet(person));
    }

    /** {@code person} as a signer. */
    public Signer signer(DemoPerson person) {
        return signers.computeIfAbsent(person, this::recognised);
    }

    /** Now, by {@code person}. */
    Origin origin(DemoPerson person) {
        return new Origin(clock.now(), person.badge(), tablet(person), clock.isDemo());
    }

    /**
     * The result of what was done.
     *
     * @throws IllegalStateException with every refusal, where it was refused
     */
    static <R> R done(Outcome<R> outcome) {
        return switch (outcome) {
            case Outcome.Done<R> done -> done.result();
            case Outcome.Refused<R> refused -> throw new IllegalStateException("refused: " + refused.refusals());
        };
    }

    private static String tablet(DemoPerson person) {
        return switch (person) {
            case ODA_MARSH -> "Office";
            case ILKA_FERROW -> "Bench 1";
            case JUNO_CASTELL -> "Bench 2";
            case RHEA_TOLLAND, CORIN_VASSE -> "Chamber";
            case BRAM_ODUYA -> "Lead's desk";
            case SANNA_VEIT -> "Stamp desk";
            case TESSA_QUARLE -> "Laboratory";
        };
    }

    private Signer recognised(DemoPerson person) {
        return switch (authenticator.signing(tablet(person), person.badge(), person.pin())) {
            case Recognition.Recognised known -> known.signer();
            case Recognition.NotRecognised not ->
                throw new IllegalStateException(person + " is not recognised: " + not.refusals());
        };
    }
}
