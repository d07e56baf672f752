/**
 * Invariant: what {@code append} acknowledged as stored is on disk, whole.
 *
 * <p>One thread writes. It takes what waits as one group: one transaction, projections in it, commit, one forced write,
 * and only then the answers. Where one request fails, the group is written anew with savepoints, so that it fails
 * alone. Content is brought into canonical form (RFC 8785) here, before the core hashes its bytes, so that the core
 * needs no library.
 */
package brightseam.ledger.shell;
