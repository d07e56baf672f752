/** Invariant: rows follow from the ledger alone. Keeps weld maps and joints, and looks into the readings over each. */
package brightseam.weld.shell;
