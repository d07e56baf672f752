/**
 * Invariant: nothing goes into or out of a closed bin, and a sealed bag that was opened takes nothing ever again.
 *
 * <p>Which travellers are in which container, and whether that container is fit for cleaned parts. Whether a
 * traveller's step allows a class of bin is the traveller's rule, not one of these.
 */
package brightseam.bins;
