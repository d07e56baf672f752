/**
 * Invariant: what {@code append} acknowledged as stored is on disk, whole.
 *
 * <p>One thread writes. It takes what waits as one group: one transaction with a savepoint for each request, projections
 * in the same transaction, commit, one forced write, and only then the answers. Content is brought into canonical form
 * (RFC 8785) here, before the core hashes its bytes, so that the core needs no library.
 */
package brightseam.ledger.shell;
