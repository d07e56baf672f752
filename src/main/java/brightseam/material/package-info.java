/**
 * Invariant: a heat keeps the facts it was received with; only whether it is on hold changes.
 *
 * <p>The metal that parts are made of, one melt at a time.
 */
package brightseam.material;
