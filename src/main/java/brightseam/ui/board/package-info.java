/**
 * Invariant: the board writes nothing; what it says about a traveller is asked of the traveller's own rules.
 *
 * <p>The lead's pages: every traveller in words, sorted by what runs out first; kits; release.
 */
package brightseam.ui.board;
