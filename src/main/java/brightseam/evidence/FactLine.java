package brightseam.evidence;

import brightseam.seal.BackDating;
import java.time.Instant;
import java.util.Optional;

/**
 * One entry of a record as a person reads it.
 *
 * @param number its number, such as {@code 12}; behind a slash the number in the history that it carries
 * @param type of the event
 * @param at when it was written down, as the shop's clock said; empty where it does not say
 * @param what in words: step, what happened, who signed and what for
 * @param signer the name of whoever signed; empty for an entry without a signature
 * @param notYetAt when the ledger did not have it yet, as a signed head shows
 * @param inBy when the ledger had it at the latest, as a signed head shows
 */
public record FactLine(String number, String type, Optional<Instant> at, String what, Optional<String> signer,
        Optional<Instant> notYetAt, Optional<Instant> inBy) {

    /** Whether it states a time at which a signed head shows that the ledger did not have it, by more than a minute. */
    public boolean isBackDated() {
        return at.isPresent() && notYetAt.flatMap(without -> BackDating.before(without, at.get())).isPresent();
    }
}
