/**
 * Invariant: what is exported can be read without this program and checked without this shop, and what is imported is
 * what was exported, hash for hash.
 *
 * <p>The lines of a full export.
 */
package brightseam.move;
