/**
 * Invariant: a page here decides nothing; it says how the gear stands, and hands what is entered to the services.
 *
 * <p>The registers of the welding gear: chambers with their limits and materials, and the argon with what is left of
 * it.
 */
package brightseam.ui.gear;
