/**
 * Invariant: a part has the shape that was given last, whoever gave it; nothing is guessed for a part without one.
 *
 * <p>What shape the parts of the drawings have, so that loads have an area and a mass.
 */
package brightseam.part;
