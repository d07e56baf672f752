/** Invariant: a meter is never shown without what is wrong with it. The register of meters, and a page for each. */
package brightseam.ui.meters;
