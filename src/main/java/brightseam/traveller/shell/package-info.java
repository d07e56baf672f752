/**
 * Invariant: only this package writes traveller streams, and a written type name is never given another meaning.
 *
 * <p>How a traveller's events are written and read.
 */
package brightseam.traveller.shell;
