/** Invariant: rows follow from the ledger alone. Keeps the parts, and says how large a lot of them is. */
package brightseam.part.shell;
