/**
 * Invariant: the document is made from what was recorded and from nothing else; it leaves nothing out and judges
 * nothing anew, so that screen, print and export tell the same story.
 *
 * <p>The record of one traveller as data: identity, metal, every pass of every step, trouble, authority, chain.
 */
package brightseam.report;
