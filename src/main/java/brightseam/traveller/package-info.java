/**
 * Invariant: a traveller changes only by {@code decide} and {@code evolve}; nothing in here reads a clock or a table.
 *
 * <p>The record of one lot of identical pieces of one heat, following one revision of one procedure.
 */
package brightseam.traveller;
