package brightseam.ledger.shell;

/**
 * Whether this process is the one of its shop that does what must be done once: watches, asks meters, seals, notes the
 * clock. With the embedded database it always is. Of several nodes on one database one is, and when that one ends or
 * dies another takes over within seconds.
 *
 * <p>For the moments in which a node does not know yet that it lost its connection two may think so. Whatever the lead
 * writes must therefore bear being written by two: through the ledger's versions, or under keys that can be used once.
 */
@FunctionalInterface
public interface Lead {

    /** Answers from memory, at once. */
    boolean isLead();
}
