/** Invariant: rows follow from the ledger alone. Keeps the stations. */
package brightseam.line.shell;
