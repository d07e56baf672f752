/**
 * Invariant: a station out of use says why; a locked bath says why and what lifts the lock.
 *
 * <p>The places where steps are done, and the baths in the tanks among them.
 */
package brightseam.line;
