/** Invariant: rows follow from the ledger alone. Keeps the kits. */
package brightseam.kit.shell;
