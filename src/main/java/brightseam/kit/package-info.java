/**
 * Invariant: a parts list is used whole or not at all, and a closed kit no longer changes.
 *
 * <p>What one chamber session needs, line by line, and the reader of the lists that it is ordered with.
 */
package brightseam.kit;
