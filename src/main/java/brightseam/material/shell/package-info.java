/** Invariant: rows follow from the ledger alone. Keeps the heats. */
package brightseam.material.shell;
