/**
 * Invariant: whoever is not recognised sees nothing here but the way in, and every page that is none says what to do.
 *
 * <p>The way in and out: sign-in, the first administrator, each role's first screen, handing a tablet over, pages that
 * cannot be shown; and the frame that tablets put round their screens.
 */
package brightseam.ui.entry;
