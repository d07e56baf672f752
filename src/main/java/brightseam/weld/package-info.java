/**
 * Invariant: an arc begins only where nothing stands against it, what its gas was is computed and never typed, and a
 * joint that was welded keeps the plan that it was welded to.
 *
 * <p>The weld map of a kit and its joints: arcs, evidence, cooling, colour and visual inspection. Colour shows how the
 * surface was shielded after the metal froze, not what the metal took up inside (common practice), so an accepted
 * colour is a finding and never a proof that a weld is sound.
 */
package brightseam.weld;
