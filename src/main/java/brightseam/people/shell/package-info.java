/**
 * Invariant: no PIN, no PIN hash and no tablet token ever reaches the ledger, a log or a screen.
 *
 * <p>People, tablets and signing in: rows, PIN hashes, sessions. Whether somebody may do something is decided in the
 * core.
 */
package brightseam.people.shell;
