/**
 * Invariant: what is in a tank is said from the travellers' records alone; nothing on these pages is kept by hand.
 *
 * <p>The lead's view of the line: every tank and dryer in the order of the route, and what is between them.
 */
package brightseam.ui.line;
