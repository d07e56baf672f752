/** Invariant: rows follow from the ledger alone. Keeps the bins, and says what is in them. */
package brightseam.bins.shell;
