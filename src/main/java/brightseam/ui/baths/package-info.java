/**
 * Invariant: a page here decides nothing about a bath; it asks the services and shows how a number came about before
 * anybody signs it.
 *
 * <p>Process control: the tanks and their baths, analyses, additions, limits, locks and trends.
 */
package brightseam.ui.baths;
