/** Invariant: rows follow from the ledger alone. Keeps the supplies, and says what stands against a scanned one. */
package brightseam.supply.shell;
