/**
 * Invariant: an export is whole or not there; an import fills an empty shop and is told as done only after the ledger
 * check.
 *
 * <p>Writes a whole shop as lines of JSON and files, and reads it back, a line at a time.
 */
package brightseam.move.shell;
