/**
 * Invariant: a page says what the joints' own rules say, and a colour is never the only sign of anything.
 *
 * <p>The lead's page of a weld map and the inspector's pages of its joints.
 */
package brightseam.ui.weld;
