/**
 * Invariant: never are both doors of the lock open, nothing is inside that was not passed in, and nothing is fit to
 * weld without readings that say so.
 *
 * <p>One chamber session from the first check-in to the opening, with the transfer lock as a part of its state. What
 * other places know (travellers, supplies, gas, meters) comes in as facts with each command.
 */
package brightseam.session;
