/**
 * Invariant: a station out of use says why.
 *
 * <p>The places where steps are done.
 */
package brightseam.line;
