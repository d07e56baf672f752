/**
 * Invariant: nothing in here reads a clock, a file, a socket or a framework; every value checks itself when made.
 *
 * <p>The handful of types that every feature shares: moments, decisions, refusals, identities and limits.
 */
package brightseam.kernel;
