/** Invariant: rows follow from the ledger alone. Keeps the chambers and the argon, and says what may go in and how long
 * it lasts. */
package brightseam.chamber.shell;
