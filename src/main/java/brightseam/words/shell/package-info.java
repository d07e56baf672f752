/**
 * Invariant: the words come from the one table that the program is shipped with, read once at the start.
 *
 * <p>Reads the words for refusals from {@code shared/refusals.yaml}.
 */
package brightseam.words.shell;
