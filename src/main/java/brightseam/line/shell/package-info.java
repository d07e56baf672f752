/** Invariant: rows follow from the ledger alone. Keeps the stations and the baths. */
package brightseam.line.shell;
