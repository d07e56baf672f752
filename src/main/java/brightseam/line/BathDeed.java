package brightseam.line;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Something that was done to a bath, as its history shows it.
 *
 * @param at the wall time
 * @param fill which filling of the tank
 * @param what what sort of deed
 * @param addend what was added, for an addition
 * @param litres how much of it
 * @param cause which lock, for locks
 * @param reason in words, where a person gave one
 * @param workings how an amount was found
 * @param by who signed it; empty where an analysis brought it about
 */
public record BathDeed(
        Instant at,
        int fill,
        What what,
        Optional<Addend> addend,
        Optional<BigDecimal> litres,
        Optional<BathLock.Cause> cause,
        Optional<String> reason,
        List<String> workings,
        String by) {

    /** What sort of deed. */
    public enum What {
        /** The record of the tank began. */
        REGISTERED,
        /** Other limits or intervals. */
        TERMS_CHANGED,
        /** Emptied and filled anew. */
        MADE_UP,
        /** Something was added. */
        ADDED,
        /** Its use was stopped. */
        LOCKED,
        /** Its use was allowed again. */
        UNLOCKED
    }
}
