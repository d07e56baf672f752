/**
 * Invariant: nothing that is stored is believed: every hash, root and signature is computed anew, and what does not fit
 * is named with where, what was expected and what was found.
 *
 * <p>The arithmetic of the ledger check, of what a backup lacks, and the control of a running server.
 */
package brightseam.check;
